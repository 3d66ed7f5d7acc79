// Which endings can be seen in a word, and where its letters go when one is put on. The rules of spelling are those of English Appendix 1
// (Department for Education 2013), years 1 and 2; the sounds of -s and -ed are common practice, no source.

import { describe, expect, it } from 'vitest'
import { ENDINGS, findInflections, type Inflection, inflect } from '../../src/phonics/inflect.ts'
import type { RawUnit } from '../../src/phonics/raw.ts'

describe('the endings that can be seen', () => {
  const see = (word: string): string =>
    findInflections(word)
      .map(({ stem, ending, change }) => `${stem}+${ending}${change === 'none' ? '' : ` ${change}`}`)
      .join(', ')

  it.each([
    ['cats', 'cat+s'],
    ['cries', 'cry+es y-to-i, crie+es drop-e, cri+es, crie+s'],
    ['ties', 'tie+es drop-e, ti+es, tie+s'],
    ['buses', 'buse+es drop-e, bus+es, buse+s'],
    ['quizzes', 'quizze+es drop-e, quizz+es, quiz+es double, quizze+s'],
    ['glass', ''],
    ['tosss', 'toss+s'],
    ["cat's", "cat+'s"],
    ["cats'", "cats+'s"],
    ["bus's", "bus+'s"],
    ['hopped', 'hop+ed double, hoppe+ed drop-e, hopp+ed'],
    ['hoped', 'hope+ed drop-e, hop+ed'],
    ['cried', 'cry+ed y-to-i, crie+ed drop-e, cri+ed'],
    ['lied', 'lie+ed drop-e, li+ed'],
    ['ied', 'ie+ed drop-e'],
    ['running', 'run+ing double, runne+ing drop-e, runn+ing'],
    ['dying', 'die+ing ie-to-y, dye+ing drop-e, dy+ing'],
    ['skiing', 'skie+ing drop-e, ski+ing'],
    ['happier', 'happy+er y-to-i, happie+er drop-e, happi+er'],
    ['biggest', 'big+est double, bigge+est drop-e, bigg+est'],
    ['seeing', 'seee+ing drop-e, see+ing'],
    ['aahed', 'aahe+ed drop-e, aah+ed'],
    ['bed', 'be+ed drop-e'],
    ['sing', 'se+ing drop-e'],
    ['string', 'stre+ing drop-e'],
    ['tsked', 'tske+ed drop-e'],
    ['is', ''],
    ['as', ''],
    ["a's", ''],
    ['cat', ''],
    ['gooed', 'gooe+ed drop-e, goo+ed'],
  ])('in %s: %s', (word, expected) => {
    expect(see(word)).toBe(expected)
  })
})

/** Reads `b0 a_e1,3 k2=K`: letters, places, sounds, and `-` for none. */
const toUnits = (text: string): readonly RawUnit[] =>
  text.split(' ').map((part): RawUnit => {
    const [, letters = '', places = '', sounds = ''] = /^(\D+)([\d,]+)=(.*)$/.exec(part) ?? []
    const heads = letters.split('_')
    const spans = places.split(',').map((at, k) => [Number(at), Number(at) + (heads[k] ?? '').length] as const)
    const phones = sounds === '-' ? [] : sounds.split('+')
    return { letters, spans, phones, kind: phones.length === 0 ? 'silent' : 'correspondence' }
  })

const toText = ({ letters, base, spans, phones, kind, stress, change }: RawUnit): string =>
  `${letters}${base === undefined ? '' : `<${base}`}${spans.map(([from, to]) => `${from}-${to}`).join(',')}=${phones.join('+') || '-'}` +
  `${kind === 'inflection' ? '!' : ''}${stress === undefined ? '' : stress}${change === undefined ? '' : ` ${change}`}`

const put = (stem: string, length: number, ending: string, change = 'none'): string =>
  inflect({ units: toUnits(stem) }, length, { stem: '', ending, change } as Inflection)
    ?.units.map(toText)
    .join(' ') ?? '-'

describe('an ending that is put on', () => {
  it.each([
    ['cats', 'c0=K a1=AE t2=T', 3, 's', 'none', 'c0-1=K a1-2=AE t2-3=T s3-4=S!'],
    ['dogs', 'd0=D o1=AO g2=G', 3, 's', 'none', 'd0-1=D o1-2=AO g2-3=G s3-4=Z!'],
    ["fox's", 'f0=F o1=AA x2=K+S', 3, "'s", 'none', "f0-1=F o1-2=AA x2-3=K+S 's3-5=IH+Z!0"],
    ['buses', 'b0=B u1=AH s2=S', 3, 'es', 'none', 'b0-1=B u1-2=AH s2-3=S es3-5=IH+Z!0'],
    ['goes', 'g0=G o1=OW', 2, 'es', 'none', 'g0-1=G oe1-3=OW s3-4=Z!'],
    ['cates', 'c0=K a1=AE t2=T', 3, 'es', 'none', '-'],
    ['jumped', 'j0=JH u1=AH m2=M p3=P', 4, 'ed', 'none', 'j0-1=JH u1-2=AH m2-3=M p3-4=P ed4-6=T!'],
    ['rained', 'r0=R ai1=EY n3=N', 4, 'ed', 'none', 'r0-1=R ai1-3=EY n3-4=N ed4-6=D!'],
    ['hunted', 'h0=HH u1=AH n2=N t3=T', 4, 'ed', 'none', 'h0-1=HH u1-2=AH n2-3=N t3-4=T ed4-6=IH+D!0'],
    ['added', 'a0=AE dd1=D', 3, 'ed', 'none', 'a0-1=AE dd1-3=D ed3-5=IH+D!0'],
    ['hopped', 'h0=HH o1=AA p2=P', 3, 'ed', 'double', 'h0-1=HH o1-2=AA pp<p2-4=P ed4-6=T! double'],
    ['stirred', 's0=S t1=T ir2=ER', 4, 'ed', 'double', 's0-1=S t1-2=T irr<ir2-5=ER ed5-7=D! double'],
    ['hutched', 'h0=HH u1=AH tch2=CH', 5, 'ed', 'double', '-'],
    ['ohred', 'a0=AA hr1=R', 3, 'ed', 'double', '-'],
    ['gamed', 'g0=G a_e1,3=EY m2=M', 4, 'ed', 'double', '-'],
    ['running', 'r0=R u1=AH n2=N', 3, 'ing', 'double', 'r0-1=R u1-2=AH nn<n2-4=N ing4-7=IH+NG!0 double'],
    ['bigger', 'b0=B i1=IH g2=G', 3, 'er', 'double', 'b0-1=B i1-2=IH gg<g2-4=G er4-6=ER!0 double'],
    ['biggest', 'b0=B i1=IH g2=G', 3, 'est', 'double', 'b0-1=B i1-2=IH gg<g2-4=G est4-7=IH+S+T!0 double'],
    ['cries', 'c0=K r1=R y2=AY', 3, 'es', 'y-to-i', 'c0-1=K r1-2=R ie<y2-4=AY s4-5=Z! y-to-i'],
    ['cried', 'c0=K r1=R y2=AY', 3, 'ed', 'y-to-i', 'c0-1=K r1-2=R ie<y2-4=AY d4-5=D! y-to-i'],
    ['crier', 'c0=K r1=R y2=AY', 3, 'er', 'y-to-i', 'c0-1=K r1-2=R i<y2-3=AY er3-5=ER!0 y-to-i'],
    ['driest', 'd0=D r1=R y2=AY', 3, 'est', 'y-to-i', 'd0-1=D r1-2=R i<y2-3=AY est3-6=IH+S+T!0 y-to-i'],
    ['plaied', 'p0=P l1=L ay2=EY', 4, 'ed', 'y-to-i', '-'],
    ['dying', 'd0=D ie1=AY', 3, 'ing', 'ie-to-y', 'd0-1=D y<ie1-2=AY ing2-5=IH+NG!0 ie-to-y'],
    ['dying of do', 'd0=D o1=UW', 2, 'ing', 'ie-to-y', '-'],
    ['baked', 'b0=B a_e1,3=EY k2=K', 4, 'ed', 'drop-e', 'b0-1=B a<a_e1-2=EY k2-3=K ed3-5=T! drop-e'],
    ['baking', 'b0=B a_e1,3=EY k2=K', 4, 'ing', 'drop-e', 'b0-1=B a<a_e1-2=EY k2-3=K ing3-6=IH+NG!0 drop-e'],
    ['bakes', 'b0=B a_e1,3=EY k2=K', 4, 'es', 'drop-e', '-'],
    ['horses', 'h0=HH or1=AO+R se3=S', 5, 'es', 'drop-e', 'h0-1=HH or1-3=AO+R s<se3-4=S es4-6=IH+Z!0 drop-e'],
    ['nosed', 'n0=N o1=OW s2=Z e3=-', 4, 'ed', 'drop-e', 'n0-1=N o1-2=OW s2-3=Z ed3-5=D! drop-e'],
    ['freed', 'f0=F r1=R ee2=IY', 4, 'ed', 'drop-e', 'f0-1=F r1-2=R ee2-4=IY d4-5=D! drop-e'],
    ['freing', 'f0=F r1=R ee2=IY', 4, 'ing', 'drop-e', '-'],
    ['being', 'b0=B e1=IY', 2, 'ing', 'drop-e', '-'],
    ['cating', 'c0=K a1=AE t2=T', 3, 'ing', 'drop-e', '-'],
    ['longer', 'l0=L o1=AO ng2=NG', 4, 'er', 'none', 'l0-1=L o1-2=AO n2-3=NG g3-4=G er4-6=ER!0'],
    [
      'strongest',
      's0=S t1=T r2=R o3=AO ng4=NG',
      6,
      'est',
      'none',
      's0-1=S t1-2=T r2-3=R o3-4=AO n4-5=NG g5-6=G est6-9=IH+S+T!0',
    ],
    ['singer', 's0=S i1=IH ng2=NG', 4, 'er', 'none', 's0-1=S i1-2=IH ng2-4=NG er4-6=ER!0'],
    ['longs', 'l0=L o1=AO ng2=NG', 4, 's', 'none', 'l0-1=L o1-2=AO ng2-4=NG s4-5=Z!'],
    ['oblonger', 'o0=AA b1=B l2=L o3=AO ng4=NG', 6, 'er', 'none', 'o0-1=AA b1-2=B l2-3=L o3-4=AO ng4-6=NG er6-8=ER!0'],
    ['nothing', 'e0=-', 1, 's', 'none', '-'],
  ] as const)('%s', (_, stem, length, ending, change, expected) => {
    expect(put(stem, length, ending, change)).toBe(expected)
  })

  it('to nothing makes no word', () => {
    expect(inflect({ units: [] }, 0, { stem: '', ending: 's', change: 'none' })).toBeUndefined()
  })

  // -s after a hiss, after a voiceless sound and after any other; -ed after t and d.
  it.each([
    ...['S', 'Z', 'SH', 'ZH', 'CH', 'JH'].map((sound) => [sound, 's', 'IH+Z']),
    ...['P', 'T', 'K', 'F', 'TH', 'HH'].map((sound) => [sound, 's', 'S']),
    ...['B', 'D', 'G', 'V', 'DH', 'M', 'N', 'NG', 'L', 'R', 'W', 'EY', 'ER'].map((sound) => [sound, 's', 'Z']),
    ...['T', 'D'].map((sound) => [sound, 'ed', 'IH+D']),
    ...['P', 'K', 'F', 'TH', 'S', 'SH', 'CH'].map((sound) => [sound, 'ed', 'T']),
    ...['B', 'G', 'V', 'Z', 'DH', 'ZH', 'JH', 'M', 'N', 'NG', 'L', 'R', 'AY'].map((sound) => [sound, 'ed', 'D']),
  ])('after %s -%s is %s', (sound, ending, expected) => {
    expect(put(`x0=${sound}`, 1, ending as string)).toContain(
      `${ending}1-${1 + (ending as string).length}=${expected}!`,
    )
  })

  it('is one of seven', () => {
    expect([...ENDINGS].sort()).toEqual(["'s", 'ed', 'er', 'es', 'est', 'ing', 's'])
  })
})
