import { css } from './escape.ts'
import { DARK, LIGHT, type Palette } from './palette.ts'

const variables = (palette: Palette): string =>
  Object.entries(palette)
    .map(([name, colour]) => `--${name}:${colour};`)
    .join('')

/** The style of a sheet. On paper it is always light, and its title stands on every page. */
export function styleOf(title: string): string {
  return [
    `:root{color-scheme:light dark;${variables(LIGHT)}}`,
    `@media screen and (prefers-color-scheme:dark){:root{${variables(DARK)}}}`,
    TEXT,
    NOTICES,
    NUMBERS,
    TABLES,
    STEPS,
    DRAWINGS,
    PRINT,
    `@media print{@page{size:A4;margin:15mm 15mm 18mm;@bottom-left{content:"${css(title.slice(0, 70))}"}@bottom-right{content:counter(page) " / " counter(pages)}}}`
  ].join('\n')
}

const TEXT = `*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%}
body{margin:0 auto;max-width:60rem;padding:1rem .75rem 3rem;font:1rem/1.45 system-ui,-apple-system,"Segoe UI",Roboto,"Noto Sans","Liberation Sans",sans-serif;color:var(--ink);background:var(--page)}
h1,h2,h3,p,li,td,th,dt,dd,caption,figcaption{overflow-wrap:anywhere;unicode-bidi:plaintext;text-align:start}
h1{font-size:1.5rem;line-height:1.2;margin:0 0 .25rem}
h2{font-size:1.25rem;line-height:1.25;margin:2.25rem 0 .75rem;padding-top:.5rem;border-top:3px solid var(--ink)}
h3{font-size:1.05rem;margin:1.25rem 0 .5rem}
p{margin:.5rem 0}
.about{color:var(--soft);margin:.1rem 0}
.unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}`

const NOTICES = `.notice{border-left:6px solid var(--line);background:var(--card);padding:.6rem .75rem;margin:.5rem 0;border-radius:0 .3rem .3rem 0}
.notice p{margin:.15rem 0}
.notice .head{font-weight:700}
.fail{border-color:var(--fail);background:var(--fail-ground)}.fail .head{color:var(--fail)}
.caution{border-color:var(--caution);background:var(--caution-ground)}.caution .head{color:var(--caution)}
.not-judged{border-color:var(--unjudged);background:var(--unjudged-ground)}.not-judged .head{color:var(--unjudged)}`

const NUMBERS = `.numbers{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,13.5rem),1fr));gap:.5rem;margin:.5rem 0 1rem}
.number{border:2px solid var(--ink);border-radius:.3rem;padding:.5rem .75rem;margin:0}
.number dt{font-weight:700}
.number dd{margin:0}
.number .big{font-size:1.9rem;line-height:1.15;font-weight:700;font-variant-numeric:tabular-nums;margin:.1rem 0}
.number .says{color:var(--soft);font-size:.9rem}`

const TABLES = `table{border-collapse:collapse;width:100%;margin:.5rem 0 1.25rem}
caption{font-weight:700;padding:.25rem 0;caption-side:top}
th,td{border:1px solid var(--line);padding:.35rem .5rem;vertical-align:top}
thead th{background:var(--card)}
tbody th{font-weight:600}
td.blank{min-width:6.5rem;height:2.4rem}
@media screen and (max-width:40rem){
table,tbody,caption{display:block}
thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
tr{display:block;border:1px solid var(--line);border-radius:.3rem;margin:0 0 .6rem;padding:.3rem .6rem}
tbody th,tbody td{display:block;border:0;padding:.15rem 0}
tbody td::before{content:attr(data-label);display:block;font-size:.85rem;color:var(--soft)}
td.blank{border-bottom:1px solid var(--ink);height:3.2rem}
}`

const STEPS = `ol.steps{list-style:none;margin:0;padding:0}
.steps li{display:grid;grid-template-columns:1.4rem 2.2rem minmax(0,1fr);column-gap:.35rem;padding:.5rem 0;border-bottom:1px solid var(--line)}
.steps .tick{width:1.15rem;height:1.15rem;border:2px solid var(--ink);border-radius:.15rem;margin-top:.15rem}
.steps .no{font-variant-numeric:tabular-nums;color:var(--soft);text-align:right;margin-top:.05rem}
.steps p{margin:0}
.steps .figure{font-size:1.3rem;line-height:1.2;font-weight:700}
.steps .doubt{color:var(--caution)}
.steps .from{color:var(--soft);font-size:.85rem}
.steps .write{display:flex;align-items:flex-end;gap:.5rem;min-height:2.2rem}
.steps .write>:first-child{max-width:65%}
.steps .rule{flex:1;min-width:3rem;border-bottom:1px solid var(--ink)}`

const DRAWINGS = `figure{margin:.75rem 0 1.5rem}
figcaption{font-weight:700;margin-bottom:.35rem}
figcaption .about{font-weight:400}
svg{display:block;width:100%;max-width:42rem;height:auto}
svg text{font:11px system-ui,"Segoe UI",Roboto,"Noto Sans","Liberation Sans",sans-serif;fill:var(--ink)}
svg text.bold{font-weight:700;font-size:12px}
svg path,svg circle{vector-effect:non-scaling-stroke;fill:none;stroke:var(--ink);stroke-width:1.2}
svg .hatch path{stroke:var(--metal);stroke-width:1}
svg .void{fill:var(--page)}svg .part{fill:var(--part)}svg .stack{fill:var(--stack)}
svg .outline{stroke-width:2}svg .thin{stroke-width:.8}
svg .dashed{stroke-dasharray:5 3}svg .axis{stroke-width:.8;stroke-dasharray:10 3 2 3}
svg .measure{stroke:var(--line);stroke-width:.8}svg .arrow{fill:var(--ink);stroke:none}
svg .plate{fill:var(--page);stroke:none}
svg .wire{stroke-width:2.2}svg .load{fill:var(--part);stroke-width:2}svg circle.wire{fill:var(--page)}`

const PRINT = `@media print{
body{font-size:10.5pt;max-width:none;padding:0}
h1{font-size:18pt}h2{font-size:13pt;margin-top:9mm;break-after:avoid}h3,figcaption,caption{break-after:avoid}
.notice,.number,tr,figure,.steps li{break-inside:avoid}
.notice,.number,thead th{-webkit-print-color-adjust:exact;print-color-adjust:exact}
svg{width:170mm;max-width:170mm;-webkit-print-color-adjust:exact;print-color-adjust:exact}
td.blank{height:9mm}
.steps li{padding:1.6mm 0}
.record{break-before:page}
}`
