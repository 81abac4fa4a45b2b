import { buildCase, cast } from '#engine';
import { harmText } from '#engine/protection/harm-words.ts';
import { mend } from '#engine/protection/mend.ts';
import { device } from '#engine/protection/devices.ts';
for (const [key,fam,In,Ib,kind,sur] of [['SUS','bs1362',13,10,'rating'],['SUS','bs1362',13,10,'shortTime'],['SUS','bs1362',13,2,'rating'],['C150','bs1362',13,17.4,'rating'],['C075','bs1362',13,5,'rating'],['C125','bs1362',13,10,'rating',{kind:'coiled',ambient_degC:20,drum_mm:120,turns:12,wound_m:25}],['A18','ul489',20,9,'rating'],['A18','ul489',20,9,'shortTime'],['A14','ul489',20,25,'rating'],['C150','C',32,13,'rating'],['C150','gG',20,13,'shortTime']] as any) {
  const of=buildCase({cable:(cast as any)[key],surroundings:sur??{kind:'stillAir',ambient_degC:25},supply:[{kind:'current',I_A:13}],lead:{length_m:25}});
  const d=device(fam,In)!; const limit=of.limits.find(l=>l.kind===kind)!;
  const t0=performance.now(); const m=mend(of,d,limit,{prospective:1000,Ib}); const dt=performance.now()-t0;
  console.log('\n##',key,d.name,kind,'Ib',Ib,'rule:',m.now.rule.outcome,'leaves',m.now.leaves,'Iz',m.now.harm.Iz.toFixed(1),dt.toFixed(0)+'ms\n',harmText(m.now.harm,key[0]==='A'?'na':'iec'));
  console.log(' =>',m.words, m.ways.map(w=>w.judged.leaves+':'+w.judged.rule.rule.where+'/'+w.judged.rule.outcome).join(' | '));
}
