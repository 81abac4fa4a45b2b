/** Usage of the trade: `iec` has mm² and 230 V, `na` has AWG and 120 V with °F beside °C. */
export type Practice = 'iec' | 'na';

/** Where the reader's practice is kept, in this browser only. */
export const practiceKey = 'ampere-and-ember:practice';

/** The part of an address's fragment that says which practice a page was handed over in. */
export const practicePart = 'practice';

/** Said on the document when the page's practice changes; the new one stands on the root element, as `data-practice`. */
export const practiceEvent = 'practice-chosen';

/**
 * Runs in the head before the first paint: the practice that the address hands over, else the kept one, else UK and IEC.
 * Plain script, inlined. An address never changes what is kept: whoever opens a colleague's link stays who they are.
 */
export const practiceAtStart = `(()=>{let p=(/[#&]${practicePart}=(iec|na)(?:&|$)/.exec(location.hash)||[])[1];
if(!p)try{p=localStorage.getItem('${practiceKey}')}catch{}
document.documentElement.dataset.practice=p==='na'?'na':'iec'})()`;

/** Runs at the end of the page: the two buttons, and a choice made in another tab. */
export const practiceSwitch = `(()=>{const r=document.documentElement,b=[...document.querySelectorAll('[data-set-practice]')],
mark=()=>{for(const x of b)x.setAttribute('aria-pressed',String(x.dataset.setPractice===r.dataset.practice))},
show=p=>{if(p===r.dataset.practice)return;r.dataset.practice=p;document.dispatchEvent(new CustomEvent('${practiceEvent}'))};
mark();document.addEventListener('${practiceEvent}',mark);
for(const x of b)x.addEventListener('click',()=>{try{localStorage.setItem('${practiceKey}',x.dataset.setPractice)}catch{}
const u=location.hash.replace(/([#&])${practicePart}=(iec|na)(&|$)/,'$1').replace(/[#&]$/,'');
if(u!==location.hash)history.replaceState(history.state,'',location.pathname+location.search+u);show(x.dataset.setPractice)});
addEventListener('storage',e=>{if(e.key==='${practiceKey}'&&(e.newValue==='iec'||e.newValue==='na'))show(e.newValue)})})()`;
