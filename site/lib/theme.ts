/** Where the reader's choice of theme is kept, in this browser only. */
export const themeKey = 'ampere-and-ember:theme';

/** Runs in the head before the first paint: the stored choice, else the system's. Plain script, inlined. */
export const themeAtStart = `(()=>{let t=null;try{t=localStorage.getItem('${themeKey}')}catch{}
if(t!=='day'&&t!=='lamp')t=matchMedia('(prefers-color-scheme: dark)').matches?'lamp':'day';
document.documentElement.dataset.theme=t})()`;

/** Runs at the end of the page: the Day and Lamp buttons, other tabs, the system's change, and Escape for the menu. */
export const themeSwitch = `(()=>{const r=document.documentElement,k='${themeKey}',q=matchMedia('(prefers-color-scheme: dark)'),
b=[...document.querySelectorAll('[data-set-theme]')],kept=()=>{try{return localStorage.getItem(k)}catch{return null}},
show=t=>{r.dataset.theme=t;for(const x of b)x.setAttribute('aria-pressed',String(x.dataset.setTheme===t))};
show(r.dataset.theme);
for(const x of b)x.addEventListener('click',()=>{try{localStorage.setItem(k,x.dataset.setTheme)}catch{}show(x.dataset.setTheme)});
addEventListener('storage',e=>{if(e.key===k&&(e.newValue==='day'||e.newValue==='lamp'))show(e.newValue)});
q.addEventListener('change',()=>{if(!kept())show(q.matches?'lamp':'day')});
const m=document.querySelector('details.menu');
if(m){m.addEventListener('keydown',e=>{if(e.key==='Escape'&&m.open){m.open=false;m.querySelector('summary').focus()}});
document.addEventListener('click',e=>{if(m.open&&!m.contains(e.target))m.open=false})}})()`;

/** The value of a token as the page shows it now, for pictures that CSS cannot paint. */
export function token(element: Element, name: `--${string}`): string {
  return getComputedStyle(element).getPropertyValue(name).trim();
}
