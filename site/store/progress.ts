import { doneIn, emptyNotebook, notebookVersion } from '#engine';
import { notebookEvent, notebookKey } from './notebook.ts';

const key = JSON.stringify(notebookKey);
const empty = JSON.stringify(emptyNotebook);

/**
 * Reads the notebook in plain script, or undefined: nothing kept, nothing may be kept, or a later version wrote it. Entries and places
 * have stood alike since version 1; one who changes that brings the document up to date here as well.
 */
const read = `const read=()=>{try{const n=JSON.parse(localStorage.getItem(${key})||'${empty}');
return n.format==='${emptyNotebook.format}'&&n.version<=${notebookVersion}?n:undefined}catch{}},
done=${doneIn}`;

/**
 * Runs at the end of a lesson: says how much is done and where the reader stopped, and keeps the heading last read. Plain
 * script, inlined, so that a page of words fetches none.
 */
export const lessonProgress = `(()=>{${read},
a=document.querySelector('[data-lesson]'),p=document.querySelector('[data-progress]');if(!a||!p||!read())return;
const l=a.dataset.lesson,of=new Set([...a.querySelectorAll('[data-item]')].map(e=>e.dataset.item)).size,
heads=[...a.querySelectorAll('.prose h2[id]')],out=p.querySelector('output'),on=p.querySelector('a');
const n0=read().places[l],stop=n0&&heads.findIndex(h=>h.id===n0.step);
if(stop>0){on.href='#'+n0.step;on.textContent='Go on at “'+heads[stop].textContent.trim()+'”';on.hidden=false}
const say=()=>{const n=read(),k=n?Math.min(of,done(n,l)):0;out.textContent=k?k+' of '+of+' things done':'';p.hidden=!k&&on.hidden};
say();document.addEventListener('${notebookEvent}',say);addEventListener('storage',e=>{if(e.key===${key})say()});
let far=stop>0?stop:0,timer;
const keep=()=>{clearTimeout(timer);timer=undefined;const n=read();if(!n)return;
n.places[l]={step:heads[far].id,of,at:new Date().toISOString()};try{localStorage.setItem(${key},JSON.stringify(n))}catch{}};
addEventListener('scroll',()=>{if(timer)return;timer=setTimeout(()=>{
let i=heads.length-1;while(i>0&&heads[i].getBoundingClientRect().top>innerHeight*.6)i--;
if(i!==far||!n0){far=i;keep()}timer=undefined},800)},{passive:true});
})()`;

/** Runs at the end of a list of lessons: marks each with what is done in it. */
export const listProgress = `(()=>{${read},n=read();if(!n)return;
for(const p of document.querySelectorAll('[data-progress-of]')){const l=p.dataset.progressOf,at=n.places[l],k=done(n,l);
if(!at&&!k)continue;p.textContent=at&&at.of&&k>=at.of?'Done':at&&at.of?Math.min(k,at.of)+' of '+at.of+' done':'Begun';p.hidden=false}})()`;
