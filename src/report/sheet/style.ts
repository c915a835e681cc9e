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
    `@media print{@page{size:A4;margin:15mm 15mm 18mm;font:9pt system-ui,"Segoe UI",Roboto,"Noto Sans","Liberation Sans",sans-serif;@bottom-left{content:"${css([...title].slice(0, 70).join(''))}"}@bottom-right{content:counter(page) " / " counter(pages)}}}`
  ].join('\n')
}

const TEXT = `*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;scroll-padding-top:1rem}
body{margin:0 auto;max-width:60rem;padding:1.25rem .75rem 3rem;font:1rem/1.5 system-ui,-apple-system,"Segoe UI",Roboto,"Noto Sans","Liberation Sans",sans-serif;color:var(--ink);background:var(--page)}
h1,h2,h3,p,li,td,tbody th,dt,dd,caption,figcaption{overflow-wrap:anywhere;unicode-bidi:plaintext;text-align:start}
h1{font-size:1.75rem;line-height:1.2;margin:0 0 .25rem}
h2{font-size:1.4rem;line-height:1.25;margin:3rem 0 1rem;padding-top:.6rem;border-top:3px solid var(--ink)}
h3{font-size:1.1rem;margin:1.75rem 0 .5rem}
p{margin:.5rem 0}
.about{color:var(--soft);margin:.1rem 0 1rem}
nav ul{list-style:none;margin:1rem 0 0;padding:0;display:flex;flex-wrap:wrap;gap:.5rem}
nav a{display:block;padding:.35rem .7rem;border:1px solid var(--line);border-radius:1.2rem;color:var(--ink);text-decoration:none}
nav a:hover,nav a:focus-visible{background:var(--card);text-decoration:underline}
.note{display:block;font-weight:400;font-size:.875rem;line-height:1.35;color:var(--soft)}
.unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}`

const NOTICES = `.notice{border-left:6px solid var(--line);background:var(--card);padding:.6rem .9rem;margin:.6rem 0;border-radius:0 .3rem .3rem 0}
.notice p{margin:.15rem 0}
.notice .head{font-weight:700}
.notice .note{font-size:.85rem}
.fail{border-color:var(--fail);background:var(--fail-ground)}.fail .head{color:var(--fail)}
.caution{border-color:var(--caution);background:var(--caution-ground)}.caution .head{color:var(--caution)}
.not-judged{border-color:var(--unjudged);background:var(--unjudged-ground)}.not-judged .head{color:var(--unjudged)}`

const NUMBERS = `.numbers{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,15rem),1fr));gap:.75rem;margin:.5rem 0 1.5rem}
.number{border:2px solid var(--ink);border-radius:.4rem;padding:.7rem .9rem;margin:0}
.number dt{font-weight:700}
.number dd{margin:0}
.number .big{font-size:2.5rem;line-height:1.1;font-weight:700;font-variant-numeric:tabular-nums;letter-spacing:-.01em;margin:.2rem 0 .3rem}
.number .also{display:block;font-size:1.1rem;letter-spacing:0}
.number .says{color:var(--soft);font-size:.95rem;line-height:1.35}`

const TABLES = `table{border-collapse:collapse;width:100%;margin:.5rem 0 1.75rem}
caption{font-weight:700;padding:.25rem 0 .5rem;caption-side:top}
th,td{border:1px solid var(--hair);padding:.45rem .6rem;vertical-align:top;text-align:start}
thead th{background:var(--card);white-space:nowrap}
tbody th{font-weight:600}
td.short{white-space:nowrap}
td.blank{min-width:6.5rem;height:2.6rem}
@media screen and (max-width:48rem){
table,tbody,caption{display:block}
thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
tr{display:grid;grid-template-columns:1fr 1fr;column-gap:1rem;border:1px solid var(--hair);border-radius:.4rem;margin:0 0 .6rem;padding:.5rem .75rem}
tbody th,tbody td{display:block;border:0;padding:.1rem 0}
tbody th,tbody td:last-child:nth-child(even){grid-column:1/-1}
tbody td::before{content:attr(data-label);display:block;font-size:.85rem;line-height:1.35;color:var(--soft)}
td.short{white-space:normal}
td.blank{border-bottom:1px solid var(--ink);min-width:0;height:3.4rem}
}`

const STEPS = `ol.steps{list-style:none;margin:0;padding:0}
.steps li{display:grid;grid-template-columns:1.5rem 2.1rem 8.5rem minmax(0,1fr);column-gap:.6rem;padding:.6rem 0;border-bottom:1px solid var(--hair)}
.steps .tick{width:1.35rem;height:1.35rem;border:2px solid var(--ink);border-radius:.2rem;margin-top:.1rem}
.steps .no{font-variant-numeric:tabular-nums;color:var(--soft);text-align:right}
.steps p{margin:0}
.steps .figure{font-size:1.3rem;line-height:1.2;font-weight:700;font-variant-numeric:tabular-nums}
.steps .figure .also{display:block;font-size:.875rem;font-weight:400}
.steps div{grid-column:4}
.steps .doubt{color:var(--caution);margin-top:.15rem}
.steps .write{display:flex;align-items:flex-end;gap:.6rem;min-height:2.4rem}
.steps .write>:first-child{max-width:65%}
.steps .rule{flex:1;min-width:3rem;border-bottom:1.5px dotted var(--ink);height:1.2rem}
@media screen and (max-width:48rem){
.steps li{grid-template-columns:1.5rem 2.1rem minmax(0,1fr)}
.steps .figure,.steps div{grid-column:3}
.steps .figure{font-size:1.6rem;line-height:1.15;margin-bottom:.15rem}
}`

const DRAWINGS = `figure{margin:1rem 0 2rem}
figcaption{font-weight:700;margin-bottom:.5rem}
figcaption .about{font-weight:400}
svg{display:block;width:100%;max-width:34rem;height:auto}
svg text{font:11px system-ui,"Segoe UI",Roboto,"Noto Sans","Liberation Sans",sans-serif;fill:var(--ink)}
svg text.bold{font-weight:700;font-size:12px}
svg path,svg circle{vector-effect:non-scaling-stroke;fill:none;stroke:var(--ink);stroke-width:1.2}
svg .hatch path{stroke:var(--metal);stroke-width:1}
svg .void{fill:var(--page)}svg .part{fill:var(--part)}svg .stack{fill:var(--stack)}
svg .outline{stroke-width:2}svg .thin{stroke-width:.8}
svg .dashed{stroke-dasharray:5 3}svg .axis{stroke-width:.8;stroke-dasharray:10 3 2 3}
svg .measure{stroke:var(--line);stroke-width:.8}svg .arrow{fill:var(--ink);stroke:none}
svg .plate{fill:var(--page);stroke:none}
svg .grid{stroke:var(--hair);stroke-width:.8}svg .band{fill:var(--metal);fill-opacity:.35;stroke-width:.8}
svg .wire{stroke-width:2.2}svg .load{fill:var(--part);stroke-width:2}svg circle.wire{fill:var(--page)}
@media (min-width:60rem){.drawings{display:grid;grid-template-columns:1fr 1fr;column-gap:2.5rem;align-items:start}.drawings>:not(figure){grid-column:1/-1}}`

const PRINT = `@media print{
body{font-size:10pt;line-height:1.35;max-width:none;padding:0}
nav{display:none}
h1{font-size:18pt}h2{font-size:14pt;margin:7mm 0 3mm;break-after:avoid}h3{font-size:11pt;margin:4mm 0 1.5mm}
h3,figcaption,caption{break-after:avoid}
p,li,dd{orphans:3;widows:3}
.notice,.number,.numbers,tr,figure,.steps li,table.together{break-inside:avoid}
thead{break-after:avoid}
.notice,.number,thead th,.steps .tick{-webkit-print-color-adjust:exact;print-color-adjust:exact}
.notice{padding:1.5mm 3mm;margin:1.5mm 0}
.number .big{font-size:22pt}
.numbers{grid-template-columns:repeat(3,1fr);gap:2.5mm}
table{margin:1mm 0 4mm}
caption{padding-bottom:1mm}
th,td{padding:1.1mm 1.8mm}
.note{font-size:8.5pt}
.drawings{display:grid;grid-template-columns:85mm 85mm;column-gap:10mm;align-items:start}.drawings>:not(figure){grid-column:1/-1}
figure{margin:2mm 0 4mm}
figcaption{font-size:9pt;line-height:1.25;margin-bottom:1.5mm}
svg{width:85mm;max-width:85mm;-webkit-print-color-adjust:exact;print-color-adjust:exact}
td.blank{height:8.5mm;min-width:24mm}
.steps li{grid-template-columns:5mm 7mm 27mm minmax(0,1fr);column-gap:2mm;padding:1.1mm 0}
.steps .tick{width:4mm;height:4mm}
.steps .figure{font-size:12pt}.steps .figure .also{font-size:8.5pt}
.steps .write{min-height:6.5mm}
.sources tbody th,.sources td{padding:.4mm 1.8mm;font-size:8.5pt}
.record{break-before:page}
}`
