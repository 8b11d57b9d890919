/** The look of the page about trust: the app's grounds and rules, small enough to be sent with the page. */
export const trustStyle = `
:root { color-scheme: light dark; --ground: #f6f0e3; --sheet: #fcf8ef; --ink: #231b13; --quiet: #5b4d3e; --rule: #a8957a; --brand: #86391b; --act: #2c2117; --act-ink: #fbf4e6; --focus: #1d4f91; }
@media (prefers-color-scheme: dark) {
  :root { --ground: #17130f; --sheet: #221c16; --ink: #f0e7d8; --quiet: #bdae98; --rule: #7a6a56; --brand: #e69a6b; --act: #ead9b4; --act-ink: #1b140d; --focus: #8fc0ff; }
}
@media (prefers-contrast: more) {
  :root { --ground: Canvas; --sheet: Canvas; --ink: CanvasText; --quiet: CanvasText; --rule: CanvasText; --brand: CanvasText; }
}
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 38rem; padding: 1.125rem 1.125rem 2rem; background: var(--ground); color: var(--ink); font: 1.125rem/1.5 "Atkinson Hyperlegible", Verdana, sans-serif; }
.question { margin: 0; color: var(--quiet); font-size: 1.0625rem; font-weight: normal; }
.answer { margin: 0.5rem 0 1.5rem; font-size: clamp(1.5rem, 1.05rem + 2.2vw, 2.125rem); line-height: 1.36; }
.act { display: block; min-height: 3rem; padding: 0.75rem 1rem; background: var(--act); color: var(--act-ink); text-align: center; text-decoration: none; font-weight: bold; }
:focus-visible { outline: 3px solid var(--focus); outline-offset: 3px; }
section, details { border-top: 1px solid var(--rule); margin-top: 1.5rem; padding-top: 0.75rem; }
details + details { margin-top: 0.75rem; }
summary { min-height: 3rem; display: flex; align-items: center; cursor: pointer; font-weight: bold; color: var(--brand); }
summary::before { content: "+"; width: 1.25rem; }
details[open] summary::before { content: "−"; }
h2 { margin: 0 0 0.5rem; font-size: 1.125rem; color: var(--brand); }
ol { padding-left: 1.5rem; }
li { margin-bottom: 0.75rem; }
.quiet { color: var(--quiet); }
code { font: 0.9375rem/1.6 ui-monospace, "DejaVu Sans Mono", monospace; overflow-wrap: anywhere; }
a { color: var(--brand); }
.qr { width: min(14rem, 100%); background: #fff; }
.qr svg { display: block; width: 100%; height: auto; }
`;
