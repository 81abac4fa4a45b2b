import { buildCase, cast } from '#engine';
import { harmSpans } from '#engine/protection/harm-spans.ts';
import { timeToLimit } from '#engine/protection/time-to-limit.ts';
import { ratingAt } from '#engine';
import { device } from '#engine/protection/devices.ts';
for (const [key,fam,In] of [['C150','bs1362',13],['C075','bs1362',13],['C150','B',16],['A18','ul489',20],['C150','gG',16]] as any) {
  const of=buildCase({cable:(cast as any)[key],surroundings:{kind:'stillAir',ambient_degC:25},supply:[{kind:'current',I_A:13}]});
  const d=device(fam,In)!;
  for (const kind of ['rating','shortTime']) {
    const limit=of.limits.find(l=>l.kind===kind)!;
    const Iz=ratingAt(of,limit.low)!;
    let n=0; const g=timeToLimit(of,limit,{T:of.Ta,flow:0},d.by[0]!.t); const memo=new Map<number,number>(); const f=(I:number)=>{ if(!memo.has(I)){n++; memo.set(I,g(I));} return memo.get(I)!;};
    harmSpans({device:d,f,Iz,prospective:1000},'guaranteed'); const n1=n; harmSpans({device:d,f,Iz,prospective:1000},'assumed');
    console.log(key,d.name,kind,n1,n);
  }
}
