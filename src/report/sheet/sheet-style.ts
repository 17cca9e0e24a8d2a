/**
 * The looks of the sheet, the same for every plan: the page names its digest. Shape, weight and word carry every meaning; paper in black
 * and white loses nothing. Colours have a contrast of at least 4.5 to 1 on white.
 */
export const sheetStyle = `
html{font:100%/1.45 system-ui,sans-serif;color:#111;background:#fff}
body{margin:0}
header,main,footer,nav{max-width:60rem;margin:0 auto;padding:0 1rem}
h1{font-size:1.7rem;margin:1rem 0 0}
h2{font-size:1.3rem;margin:2rem 0 .5rem;border-bottom:3px solid #111}
h3{font-size:1.12rem;margin:0}
h4{font-size:1rem;margin:1rem 0 .25rem}
p,ul,ol,dl{margin:.35rem 0}
p,li,td,th,h1,h2,h3,h4,figcaption,caption{overflow-wrap:anywhere}
a{color:#00507a}
.vehicle{font-size:1.2rem;font-weight:600}
.about,.where,.layer,small{color:#444;font-size:.87rem}
.answer{border:3px solid #111;padding:.5rem 1rem;margin:1rem 0}
.answer.stopped{border-width:8px;border-color:#9a2a00}
.answer.held,.answer.unjudged{border-style:dashed;border-color:#00507a}
.answer h2{margin:0;border:0;display:flex;flex-wrap:wrap;gap:.25rem 1rem;align-items:center}
.verdict{font-size:1.5rem;letter-spacing:.04em}
.stops,.findings,.open{list-style:none;padding:0}
.stops li{margin:.4rem 0}
.sign{width:1.1em;height:1.1em;vertical-align:-.15em}
.label{text-transform:uppercase;white-space:nowrap}
.findings>li{border:1px solid #767676;border-left-width:8px;margin:.6rem 0;padding:.3rem .8rem;break-inside:avoid}
.findings>li.stop{border:2px solid #9a2a00;border-left-width:14px}
.findings>li.hold{border-color:#00507a;border-left:8px double #00507a}
.findings>li.note{border-left:8px dotted #767676}
summary{cursor:pointer;color:#00507a;font-weight:600}
.part{border-top:2px solid #767676;padding-top:.6rem;margin-top:1.4rem}
.work{border-left:4px solid #767676;padding-left:.8rem;margin:.8rem 0}
.wide{overflow-x:auto}
table{border-collapse:collapse;margin:.6rem 0;width:100%}
caption{text-align:left;font-weight:600;padding:.2rem 0}
th,td{border:1px solid #767676;padding:.2rem .45rem;text-align:left;vertical-align:top}
thead th{overflow-wrap:break-word}
.wide tbody th,.wide td{min-width:4.9em}
.whole{white-space:nowrap}
.pairs{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(24rem,100%),1fr));gap:0 1.5rem;margin:.5rem 0}
.pairs div{display:flex;gap:.6rem;border-bottom:1px solid #999;padding:.15rem 0;break-inside:avoid}
.pairs dt{flex:0 0 9.5rem;font-weight:600}
.pairs dd{margin:0;min-width:0;overflow-wrap:anywhere}
.wide table{font-size:.93rem}
thead th{border-bottom:2px solid #111}
figure{margin:.8rem 0;break-inside:avoid}
figcaption{font-weight:600}
figure svg{max-width:100%;height:auto}
.open li{margin:.3rem 0 .3rem 1.8rem}
.open li::before{content:"";float:left;margin-left:-1.8rem;width:.9rem;height:.9rem;border:2px solid #111}
.sign-off .wide td{height:2.2rem}
footer{border-top:3px solid #111;margin-top:2rem;padding-bottom:2rem}
@page{margin:14mm 12mm 16mm;@bottom-right{content:counter(page) " / " counter(pages);font:9pt sans-serif}}
@media print{
html{font-size:10.5pt}
header,main,footer{max-width:none;padding:0 2px}
.pairs{grid-template-columns:1fr 1fr}
.layer{break-after:avoid}
.wide table{font-size:9pt}
.sign-off{break-inside:avoid}
tbody tr:first-child{break-before:avoid}
nav{display:none}
a{color:#111;text-decoration:none}
h2,h3,h4,h2+p,caption,figcaption{break-after:avoid}
.pairs{break-inside:avoid}
figure{break-inside:auto}
figure svg{max-width:88%}
h2+p,figure p,.short{break-inside:avoid}
summary{display:inline;list-style:none;color:#111}
summary::after{content:":"}
details>p{display:inline}
details::details-content{display:inline}
tr{break-inside:avoid}
thead{display:table-header-group}
.wide{overflow:visible}
details::details-content{content-visibility:visible;block-size:auto}
}
`;
