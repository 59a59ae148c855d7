/** Contrast by WCAG 2.2: relative luminance and contrast ratio as its glossary defines them. */

/** `rgb(…)` as a browser computes it, or `#rrggbb`. */
function channelsOf(colour: string): readonly [number, number, number] {
  const hex = /^#(..)(..)(..)$/.exec(colour);
  const rgb = /^rgba?\((\d+), (\d+), (\d+)(?:, 1)?\)$/.exec(colour);
  const read = hex ? hex.slice(1).map((part) => Number.parseInt(part, 16)) : (rgb?.slice(1).map(Number) ?? []);
  const [r = Number.NaN, g = Number.NaN, b = Number.NaN] = read;
  return [r, g, b];
}

function luminanceOf(colour: string): number {
  const [r, g, b] = channelsOf(colour).map((channel) => {
    const c = channel / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * (r ?? Number.NaN) + 0.7152 * (g ?? Number.NaN) + 0.0722 * (b ?? Number.NaN);
}

/** From 1 to 21; never rounded, since 4.478 must fail where 4.5 is asked. */
export function contrastOf(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminanceOf(one), luminanceOf(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}
