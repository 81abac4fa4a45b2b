import { buildCase, celsius, cast } from '#engine';
import { harmSet } from '#engine/protection/harm-set.ts';
import { device } from '#engine/protection/devices.ts';
import { microseconds } from './clock.ts';
const show=(s:any[])=>s.map(x=>`${x.from.I.toFixed(1)}(${x.from.evidence} ${x.from.t.toFixed(1)})–${x.to.I.toFixed(1)}(${x.to.evidence} ${x.to.t.toFixed(2)})`).join('  ')||'none';
for (const [key,fam,In,Ta,Ib] of [['C150','bs1362',13,25,undefined],['C125','bs1362',13,25],['C100','bs1362',13,25],['C075','bs1362',13,25],['SUS','bs1362',13,25],['SUS','bs1362',13,25,10],['SUS','bs1362',3,25,2],['C150','B',16,25],['A18','ul489',20,25],['A14','ul489',20,25]] as any) {
  const of=buildCase({cable:(cast as any)[key],surroundings:{kind:'stillAir',ambient_degC:Ta},supply:[{kind:'current',I_A:13}]});
  const d=device(fam,In)!;
  for (const kind of ['rating','shortTime']) {
    const limit=of.limits.find(l=>l.kind===kind)!;
    const ask=()=>harmSet(of,d,limit,{prospective:1000,Ib});
    const h=ask();
    console.log(key,d.name,celsius(limit.low),'Ib',Ib,'Iz',h.Iz.toFixed(1),h.loadHarms?'LOAD':'', microseconds(ask,20).toFixed(0),'µs\n  G',show(h.spans as any),'\n  A',show(h.assumed as any));
  }
}
