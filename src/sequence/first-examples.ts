// A line to show for letters that somebody wrote alone: the sound that a class learns first for them, in a word that it knows.
// Common practice, no source.

const LINES = `
a cat, b bat, c cat, d dig, e hen, f fan, g gap, h hat, i sit, j jam, k kit, l lip, m mat, n nap, o hot, p pan, r rat, s sat, t tap, u cup,
v van, w wig, x box, y yes, z zip,
ai rain, air hair, ar car, au haul, aw saw, ay day, a_e cake, ch chip, ck duck, ea sea, ear hear, ee green, er fern, ew grew, e_e these,
ff off, igh night, ie pie, ir bird, i_e time, kn knee, ll bell, nk bank, ng sing, oa boat, oe toe, oi coin, oo moon, or fork, ou out,
ow cow, oy boy, o_e home, ph dolphin, qu quit, sh ship, ss miss, tch catch, th thin, ue blue, ur fur, u_e tune, wh when, wr write, zz buzz,
are care, ce fence, dge bridge, eer deer, ge large, gn sign, le table, mb lamb, oor door, ore more, se horse, tion station, ve give
`

/** `d as in dig`; undefined for letters that are no common group. */
export function toFirstLine(letters: string): string | undefined {
  const line = LINES.trim()
    .split(/,\s*/)
    .find((one) => one.startsWith(`${letters} `))
  return line === undefined ? undefined : line.replace(' ', ' as in ')
}
