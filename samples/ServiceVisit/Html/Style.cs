namespace TreadmillMech.Samples.ServiceVisit.Html;

/// <summary>How the page looks: dark on white, nothing told by colour alone, at home on a phone and on paper.</summary>
internal static class Style
{
    internal const string Sheet = """
        :root{color-scheme:light}
        *{box-sizing:border-box}
        body{margin:0;background:#fff;color:#111;font:1rem/1.5 system-ui,"Segoe UI",Roboto,"Liberation Sans",Arial,sans-serif;
          overflow-wrap:break-word}
        main{max-width:66rem;margin:0 auto;padding:1rem}
        h1{font-size:1.6rem;line-height:1.25;margin:0 0 .25rem}
        h2{font-size:1.25rem;line-height:1.3;margin:2rem 0 .5rem;padding-top:.4rem;border-top:2px solid #111}
        h3{font-size:1.05rem;margin:1.4rem 0 .3rem}
        p,ul,ol,dl{margin:.4rem 0;max-width:44rem}
        li{margin:.3rem 0}
        a{color:#0b3d75}
        .quiet{color:#444;font-size:.92rem}
        .verdict{border:3px solid #111;padding:.6rem .9rem;margin:1rem 0;max-width:44rem}
        .verdict b{display:block;font-size:1.3rem;text-transform:uppercase;letter-spacing:.03em}
        .out{border-width:6px;border-style:double}
        .restrict{border-style:dashed}
        .unread{border-style:dotted}
        dl.rows{display:grid;grid-template-columns:max-content 1fr;gap:.15rem .8rem}
        dl.rows dt{color:#444;grid-column:1}
        dl.rows dd{margin:0;grid-column:2}
        .charts{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,20rem),1fr));gap:1.2rem;align-items:start;margin:.8rem 0;
          max-width:66rem}
        figure{margin:0;max-width:30rem;break-inside:avoid}
        figcaption{font-weight:600;margin-bottom:.3rem}
        table{border-collapse:collapse;width:100%;max-width:66rem;margin:.5rem 0}
        th,td{text-align:left;vertical-align:top;padding:.3rem .6rem .3rem 0;border-bottom:1px solid #bbb}
        th{font-weight:600;border-bottom:2px solid #111}
        svg{display:block;width:100%;height:auto}
        svg text{font-size:12px;fill:#111}
        .right{text-anchor:end}.middle{text-anchor:middle}.strong{font-weight:600}
        .axis{fill:#333}
        svg .small{font-size:11px;fill:#333}
        .halo{paint-order:stroke;stroke:#fff;stroke-width:4px}
        .grid{stroke:#ddd}.frame,.tick{stroke:#111}
        .limit{stroke:#111;stroke-width:1.6;stroke-dasharray:6 4}
        .spread{stroke:#555}
        .curve{fill:none;stroke:#111;stroke-width:1.8}
        .c1{stroke:#555;stroke-dasharray:7 3}.c2{stroke-dasharray:2 3}.c3{stroke:#555;stroke-dasharray:9 3 2 3}
        .c4{stroke:#777;stroke-dasharray:1 2}
        .full{fill:#111;stroke:#111}.open{fill:#fff;stroke:#111;stroke-width:1.8}
        .before{fill:#555}.after{fill:#fff;stroke:#111;stroke-width:1.6}.room{fill:#fff;stroke:#111;stroke-width:1.6}
        @media (max-width:40rem){
          table.narrow{font-size:.85rem}
          table.stack thead{position:absolute;left:-999rem}
          table.stack,table.stack tbody,table.stack tr,table.stack td{display:block}
          table.stack tr{border-bottom:1px solid #888;padding:.4rem 0}
          table.stack td{border:0;padding:.1rem 0}
          table.stack td[data-of]::before{content:attr(data-of) ": ";color:#444}
          table.stack td:first-child{font-weight:600}
          dl.rows{grid-template-columns:1fr;gap:0}
          dl.rows dd{margin:0 0 .35rem;grid-column:1}
        }
        @media print{
          @page{margin:14mm}
          html{font-size:10pt}
          main{max-width:none;padding:0}
          nav{display:none}
          section.page+section.page{break-before:page}
          h2,h3,figcaption{break-after:avoid}
          li,tr,.verdict,dl.rows{break-inside:avoid}
          .charts{grid-template-columns:1fr 1fr}
          a{color:#111;text-decoration:none}
        }
        """;
}
