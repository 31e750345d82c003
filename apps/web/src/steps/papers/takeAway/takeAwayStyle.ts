/** Paper and ink, large enough for dirty hands; prints as it stands. */
export const TAKE_AWAY_STYLE = `
:root{--sheet:#FBFCF8;--ink:#15201D;--ink2:#47544F;--line:#8B9690;--good:#0B5B54;--stop:#9E1B1B;color-scheme:light}
@media (prefers-color-scheme:dark){:root{--sheet:#12191B;--ink:#ECEFE8;--ink2:#AEB9B3;--line:#75827D;--good:#74D4C3;--stop:#FF9385;color-scheme:dark}}
*{box-sizing:border-box}body{margin:0 auto;max-width:820px;padding:16px;background:var(--sheet);color:var(--ink);font:18px/1.35 "Atkinson Hyperlegible Next",Verdana,sans-serif;font-variant-numeric:tabular-nums}
html{scroll-padding-top:130px}h1{font-size:28px;margin:0}h2{font-size:26px;margin:32px 0 8px;border-bottom:3px solid var(--ink)}h3{font-size:22px;margin:16px 0 4px;display:flex;justify-content:space-between;align-items:baseline;gap:12px}
p{margin:4px 0}.note{color:var(--ink2)}.cut{font-size:30px}ul{padding-left:20px}
nav{position:sticky;top:0;display:flex;flex-wrap:wrap;gap:0 16px;align-items:center;padding:6px 0;margin-top:8px;background:var(--sheet);border-bottom:1px solid var(--line)}nav a{padding:12px 0;color:inherit;font-weight:700}nav button{margin-left:auto}
article{padding:8px 0 16px;border-top:1px solid var(--line);break-inside:avoid}.band{display:block;width:100%;height:26px}
.end{display:flex;gap:14px;padding:12px 8px;margin:8px 0;border:2px solid var(--ink);min-height:64px;align-items:flex-start}.end>span{min-height:44px;align-content:center}
input[type=checkbox]{width:44px;height:44px;flex:none;accent-color:var(--good)}.first{background:var(--ink);color:var(--sheet);padding:0 10px}
.row{display:grid;grid-template-columns:1fr auto 130px;gap:12px;align-items:center;padding:8px 0;border-top:1px solid var(--line);break-inside:avoid}.right{text-align:right}
.row input:not([type]){width:100%;min-height:48px;font:inherit;font-weight:700;text-align:right;border:2px solid var(--ink);background:var(--sheet);color:var(--ink);padding:0 8px}
.row input::placeholder{color:var(--ink2);opacity:1;font-weight:400}
output{font-weight:700}output.outside{color:var(--sheet);background:var(--stop);padding:0 8px}.caution{border:2px solid var(--stop);padding:8px 12px;font-weight:600}
button,#by{min-height:48px;font:inherit;font-weight:600;border:2px solid var(--ink);background:var(--sheet);color:var(--ink);padding:0 14px}
:focus-visible{outline:3px solid var(--ink);outline-offset:2px}@media (max-width:560px){.row{grid-template-columns:1fr 120px}.row>:first-child{grid-column:1/-1}.right{text-align:left}#by{width:100%}}
@page{margin:12mm}@media print{:root{--sheet:#FFF;--ink:#000;--ink2:#38433F;--line:#6F7A75;--good:#0B5B54;--stop:#9E1B1B;color-scheme:light;print-color-adjust:exact}
nav,#by,label:has(#by){display:none}body{max-width:none;padding:0;font-size:12px}h2{font-size:18px;break-after:avoid}h3,.cut{font-size:16px}input[type=checkbox]{width:22px;height:22px}.end{padding:6px;margin:4px 0;min-height:0}.end>span{min-height:22px}.band{height:14px}
#build{columns:2;column-gap:8mm}#build h2{column-span:all}.row{padding:3px 0;grid-template-columns:1fr auto 110px}.row>:first-child{grid-column:auto}.right{text-align:right}.row input:not([type]){min-height:26px;color:var(--ink)}}
`;
