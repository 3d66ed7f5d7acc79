// The look of the page: calm, large print for what a child reads, small for what an adult reads. No outside files.

export const STYLE = `
:root { color-scheme: light dark; --paper: #fffdf8; --ground: #eef0ea; --ink: #22281f; --quiet: #596152; --line: #c5cbbd; --mark: #fbe3a2; --letters: #a3210f; --bar: #4d7358; }
@media (prefers-color-scheme: dark) { :root { --paper: #23271f; --ground: #181b15; --ink: #eceee6; --quiet: #b0b8a6; --line: #4b5245; --mark: #5b4a14; --letters: #ff9c85; --bar: #86b193; } }
* { box-sizing: border-box; }
body { margin: 0; background: var(--ground); color: var(--ink); font: 1rem/1.5 system-ui, sans-serif; }
header, main, footer { max-width: 46rem; margin: 0 auto; padding: 1rem 1.25rem; }
h1 { font-size: 1.5rem; margin: 1rem 0 .25rem; }
h2 { font-size: 1.3rem; margin: 0; }
h3 { font-size: 1rem; margin: 1.75rem 0 .4rem; color: var(--quiet); }
p { margin: .4rem 0; }
a { color: inherit; }
article { border-top: 3px solid var(--line); margin-top: 2.5rem; padding-top: 1.25rem; }
.quiet, figcaption, caption, footer { color: var(--quiet); font-size: .9rem; }
.page { background: var(--paper); border: 1px solid var(--line); border-radius: 6px; padding: 1.1rem 1.4rem; font: 1.45rem/1.75 Andika, Verdana, sans-serif; overflow-wrap: anywhere; }
.page p { margin: .5rem 0; }
.page .title, .page .heading { font-weight: bold; }
mark { background: var(--mark); color: inherit; border-radius: 3px; padding: 0 .1em; outline: 1px solid var(--quiet); }
mark u { text-decoration: underline solid var(--letters) .14em; text-underline-offset: .16em; font-weight: bold; }
a.note { font: bold .8rem/1 system-ui, sans-serif; vertical-align: super; text-decoration: none; border: 1px solid var(--quiet); border-radius: 1em; padding: .05em .4em; margin-left: .15em; }
ol.notes { padding-left: 2rem; margin: .6rem 0; }
ol.notes li { margin: .5rem 0; }
ol.notes li:target { outline: 2px solid var(--letters); outline-offset: 4px; }
.kind { font-weight: bold; }
.kind.error { color: var(--letters); }
code { font-size: .9em; }
figure { margin: 1rem 0; overflow-x: auto; }
.defs { position: absolute; }
.chart { max-width: 100%; height: auto; }
.chart text { font: 13px system-ui, sans-serif; fill: var(--ink); }
.readable { fill: var(--bar); }
.unread { stroke: var(--ink); stroke-width: 1; }
.hatch-ground { fill: var(--paper); }
.hatch-line { fill: var(--ink); }
.scroll { overflow-x: auto; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
caption { text-align: left; padding-bottom: .3rem; }
th, td { padding: .2rem .7rem; text-align: right; border-bottom: 1px solid var(--line); }
tfoot th, tfoot td { font-weight: bold; }
nav ul { padding-left: 1.2rem; }
#alone { margin: 1rem .4rem 0 1.25rem; }
#alone:checked ~ header, #alone:checked ~ footer, #alone:checked ~ main :is(.adult, figure, .scroll, ol.notes, a.note, h2 .quiet, h2.shown, h3) { display: none; }
#alone:checked ~ main mark { background: none; outline: none; padding: 0; }
#alone:checked ~ main mark u { text-decoration: none; font-weight: inherit; }
#alone:checked ~ main .page { margin: 1rem 0; }
@media print {
:root { --paper: #fff; --ground: #fff; --ink: #000; --quiet: #444; --line: #999; --mark: #eee; --letters: #000; --bar: #666; }
@page { margin: 15mm; }
body { background: none; font-size: 9pt; line-height: 1.35; }
header, main, footer { max-width: none; padding: 0; }
#alone, #alone + label { display: none; }
h1 { font-size: 14pt; }
h2 { font-size: 12pt; }
h3 { margin-top: 3mm; break-after: avoid; }
.page { font-size: 13pt; line-height: 1.5; padding: 3mm 4mm; }
article { margin-top: 0; }
article + article { break-before: page; }
.page, ol.notes li, tr, figure { break-inside: avoid; }
.scroll { overflow: visible; }
#alone:checked ~ main .page { font-size: 20pt; line-height: 1.75; border: 0; }
}
`.trim()
