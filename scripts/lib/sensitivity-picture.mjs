const ROW = 22;
const LEFT = 225;
const BAR = 300;
const PANEL_GAP = 46;
const TOP = 40;
const SHOWN = 9;

/**
 * Bars of Sobol's indices, one panel for each answer, as an SVG that reads on a light and on a dark page: the thick bar is
 * what a factor does alone, the thin line goes on to what it does together with others.
 * @param {readonly { readonly id: string }[]} factors
 * @param {readonly { readonly title: string, readonly indices: readonly { readonly first: number, readonly total: number, readonly sign: number }[] }[]} found
 * @returns {string}
 */
export function picture(factors, found) {
  const panel = TOP + SHOWN * ROW + PANEL_GAP;
  const width = LEFT + BAR + 60;
  const panels = found.map(({ title, indices }, p) => {
    const top = p * panel;
    const strongest = indices
      .map((index, k) => ({ ...index, id: factors[k]?.id ?? '' }))
      .sort((one, other) => other.total - one.total)
      .slice(0, SHOWN);
    const rows = strongest.map(({ id, first, total, sign }, row) => {
      const y = top + TOP + row * ROW;
      const alone = Math.max(0, Math.min(first, total)) * BAR;
      return [
        `<text x="${LEFT - 10}" y="${y + 14}" text-anchor="end">${id} ${sign > 0 ? '↑' : '↓'}</text>`,
        `<rect class="alone" x="${LEFT}" y="${y + 4}" width="${alone.toFixed(1)}" height="12"/>`,
        `<line class="whole" x1="${LEFT}" y1="${y + 10}" x2="${(LEFT + total * BAR).toFixed(1)}" y2="${y + 10}"/>`,
        `<text x="${(LEFT + total * BAR + 8).toFixed(1)}" y="${y + 14}">${total.toFixed(2)}</text>`,
      ].join('');
    });
    const axis = `<line class="axis" x1="${LEFT}" y1="${top + TOP}" x2="${LEFT}" y2="${top + TOP + SHOWN * ROW}"/>`;
    return `<text class="title" x="10" y="${top + 24}">${title}</text>${axis}${rows.join('')}`;
  });
  const key = found.length * panel;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${key + 20}" width="${width}" height="${key + 20}" role="img">
<title>What the heat and the losses of a heap hang on: Sobol's indices</title>
<style>
text { font: 13px system-ui, sans-serif; fill: #1f2328; }
.title { font-weight: 600; font-size: 14px; }
.alone { fill: #2f6f8f; }
.whole { stroke: #1f2328; stroke-width: 2; }
.axis { stroke: #6e7781; stroke-width: 1; }
@media (prefers-color-scheme: dark) {
  text { fill: #e6edf3; }
  .alone { fill: #6fb3d2; }
  .whole { stroke: #e6edf3; }
}
</style>
${panels.join('\n')}
<text x="10" y="${key + 6}">Bar: alone. Line and figure: together with others. ↑ raises, ↓ lowers on the whole.</text>
</svg>
`;
}
