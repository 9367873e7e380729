import { test } from 'vitest';
import { loadReference } from '/work/main/src/household/reference-file.ts';
import { loadHighs } from '/work/main/src/formulation/highs.ts';
import { Formulation } from '/work/main/src/formulation/formulation.ts';
import { parseProblem } from '/work/main/src/formulation/parse.ts';
import { drawProblem, fullyKnown } from '/work/main/test/formulation/problems.ts';
test('p', {timeout:1e6}, async () => {
  const reference = loadReference(); const highs = await loadHighs(); const pool = fullyKnown(reference);
  const t:any = {}; const c:any={};
  const add=(k:string,ms:number)=>{t[k]=(t[k]??0)+ms;c[k]=(c[k]??0)+1; t[k+'max']=Math.max(t[k+'max']??0,ms)};
  for (let s=5000;s<5150;s++){
    const d=drawProblem(pool,s,process.env.OBJ as any ?? 'nearest');
    if (d.foods.reduce((a,f)=>a+(f.max??100),0)<100) continue;
    const {problem}=parseProblem(JSON.parse(JSON.stringify(d)),reference);
    const f:any=new Formulation(problem,{reference,highs});
    const t0=performance.now(); const b=f.best(); add('best',performance.now()-t0);
    if(b){ const t1=performance.now(); const sp=problem.foods.map((_:any,i:number)=>f.polytope.span(i)); add('spans',performance.now()-t1);
      const t2=performance.now(); f.toGrams(f.exact(b.x)); add('grams',performance.now()-t2);}
    else { const t3=performance.now(); const r=f.collision(); add('collision',performance.now()-t3); add('size'+r.conflict.length,0);}
    f.dispose();
  }
  console.log(t,c);
});
