// Words that nobody listed, letter by letter, as a beginner reads them; and words of which it is not known how they are said. Common practice, no
// source: the first sound of each group of letters is the one that is taught first.

import { describe, expect, it } from 'vitest'
import { testPhonics } from '../lexicon-for-tests.ts'
import { toBlocks } from './blocks.ts'

const read = (word: string) => testPhonics('general-american').read(word)

/** Each pronunciation, letter by letter, parted by bars. */
const say = (word: string): string =>
  read(word)
    .pronunciations.map(({ units }) =>
      units.map(({ letters, base, sound }) => `${letters}${base === undefined ? '' : `<${base}`}=${sound}`).join(' '),
    )
    .join(' | ')

const LINES = `
  letter by letter
    zub: z=z u=ʌ b=b
    zibe: z=z i_e=aɪ b=b
    vux: v=v u=ʌ x=ks
    zinx: z=z i=ɪ n=ŋ x=ks
    zuff: z=z u=ʌ ff=f
    zidge: z=z i=ɪ dge=dʒ
    zatch: z=z a=æ tch=tʃ
    zotch: z=z o=ɑ tch=tʃ
    zung: z=z u=ʌ ng=ŋ
    phib: ph=f i=ɪ b=b
    quib: qu=kw i=ɪ b=b
    quab: qu=kw a=æ b=b
    gnib: gn=n i=ɪ b=b
    wrab: wr=r a=æ b=b
    whib: wh=w i=ɪ b=b
    zomb: z=z o=ɑ mb=m
    yab: y=j a=æ b=b
    yub: y=j u=ʌ b=b
    zy: z=z y=aɪ
    zyb: z=z y=ɪ b=b
    zab: z=z a=æ b=b
    zabby: z=z a=æ bb=b y=iː
    zew: z=z ew=uː | z=z ew=juː
    zaw: z=z aw=ɔ
    zay: z=z ay=eɪ
    zai: z=z ai=eɪ
    zair: z=z air=ɛr
    zare: z=z are=ɛr
    zear: z=z ear=ɪr | z=z ear=ɛr
    zeer: z=z eer=ɪr
    zere: z=z ere=ɪr
    zore: z=z ore=ɔr
    zoor: z=z oor=ɔr
    zoar: z=z oar=ɔr
    zir: z=z ir=ɜr
    zire: z=z ire=aɪr
    zur: z=z ur=ɜr
    zure: z=z ure=jʊr | z=z ure=ʊr
    zor: z=z or=ɔr
    zar: z=z ar=ɑr
    zer: z=z er=ɜr
    zie: z=z ie=aɪ | z=z ie=iː
    zied: z=z ie=aɪ d=d | z=z ie=iː d=d
    zigh: z=z igh=aɪ
    zeigh: z=z eigh=eɪ
    zoy: z=z oy=ɔɪ
    zoi: z=z oi=ɔɪ
    zow: z=z ow=aʊ | z=z ow=oʊ
    zou: z=z ou=aʊ
    zau: z=z au=ɔ
    zey: z=z ey=iː | z=z ey=eɪ
    za: z=z a=ɑ
    zo: z=z o=oʊ
    zu: z=z u=uː
    zithe: z=z i_e=aɪ th=ð | z=z i_e=aɪ th=θ
    zuge: z=z u_e=uː ge=dʒ | z=z u_e=juː ge=dʒ
    zose: z=z o_e=oʊ s=z | z=z o_e=oʊ s=s
    zice: z=z i_e=aɪ c=s
    zafe: z=z a_e=eɪ f=f
    zede: z=z e_e=iː d=d
    zabe: z=z a_e=eɪ b=b
    thoge: th=θ o_e=oʊ ge=dʒ | th=ð o_e=oʊ ge=dʒ
    sploob: s=s p=p l=l oo=uː b=b | s=s p=p l=l oo=ʊ b=b
    strinx: s=s t=t r=r i=ɪ n=ŋ x=ks
    dwib: d=d w=w i=ɪ b=b
    gwab: g=ɡ w=w a=æ b=b
    shlub: sh=ʃ l=l u=ʌ b=b
    fuxer: f=f u=ʌ x=ks er=ər
    taxy: t=t a=æ x=ks y=iː
    zax: z=z a=æ x=ks
    nax: n=n a=æ x=ks
    zixt: z=z i=ɪ x=ks t=t
    kerplunk: k=k er=ɜr p=p l=l u=ʌ n=ŋ k=k
    flump: f=f l=l u=ʌ m=m p=p
    glunk: g=ɡ l=l u=ʌ n=ŋ k=k
    theth: th=θ e=ɛ th=θ | th=ð e=ɛ th=θ | th=θ e=ɛ th=ð | th=ð e=ɛ th=ð
    Jub: j=dʒ u=ʌ b=b
  with an ending
    zake: z=z a_e=eɪ k=k
    zubbed: z=z u=ʌ bb<b=b ed=d
    zubbing: z=z u=ʌ bb<b=b ing=ɪŋ
    zubs: z=z u=ʌ b=b s=z | z=z u=ʌ b=b s=s
    snibes: s=s n=n i_e=aɪ b=b s=z
    snibing: s=s n=n i<i_e=aɪ b=b ing=ɪŋ
    zaked: z=z a<a_e=eɪ k=k ed=t
    zaking: z=z a<a_e=eɪ k=k ing=ɪŋ
    zamming: z=z a=æ mm<m=m ing=ɪŋ
    zotted: z=z o=ɑ tt<t=t ed=ɪd
    zobed: z=z o<o_e=oʊ b=b ed=d
    floost: f=f l=l oo=uː s=s t=t | f=f l=l oo=ʊ s=s t=t
    floosts: f=f l=l oo=uː s=s t=t s=s | f=f l=l oo=ʊ s=s t=t s=s
    zub's: z=z u=ʌ b=b 's=z
    zubs': z=z u=ʌ b=b s=z '= | z=z u=ʌ b=b s=s '=
  noises
    tsk: t=t s=s k=k
    pst: p=p s=s t=t
    grr: g=ɡ rr=r
    brr: b=b rr=r
    mmm: mmm<mm=m
    hmm: h=h mm=m
    zz: zz=z
    shh: shh<sh=ʃ
    psst: p=p ss=s t=t
    pfft: p=p ff=f t=t
    sss: sss<ss=s
    nooo: n=n ooo<o=oʊ
  two words
    hencat: h=h e=ɛ n=n c=k a=æ t=t
    henbox: h=h e=ɛ n=n b=b o=ɑ x=ks
    boxhen: b=b o=ɑ x=ks h=h e=ɛ n=n
    teabox: t=t ea=iː b=b o=ɑ x=ks
`

describe.each(toBlocks(LINES))('$heading', ({ lines }) => {
  it.each(lines)('%s', (word, expected) => {
    expect(say(word)).toBe(expected)
  })
})

describe('a word that has no sounds', () => {
  it.each(['ch', 'th', 'bcd', 'fgh', 'etc', 'ok', 'vs', 'mr'])('%s', (word) => {
    expect(read(word)).toMatchObject({ source: 'guess', pronunciations: [] })
    expect(read(word).unsure).toBeUndefined()
  })

  it('nor has one of more than sixty letters', () => {
    expect(read('zub'.repeat(20)).pronunciations.length).toBeGreaterThan(0)
    expect(read(`${'zub'.repeat(20)}z`).pronunciations).toEqual([])
  })
})

const isDoubted = (word: string): boolean => read(word).unsure === true
const toCapital = (word: string): string => word.slice(0, 1).toUpperCase() + word.slice(1)

describe('how sure a reading is', () => {
  it.each(
    'zub zog flimber momtib jub zebmog zubs floost dreeps glorps amina sunita zubbly zubbler oleg omari yuki'.split(
      ' ',
    ),
  )('of %s, as a word and as a name', (word) => {
    expect([isDoubted(word), isDoubted(toCapital(word))]).toEqual([false, false])
  })

  it.each(
    'zubmog shamsud ulduz jari zaking zubbed jubber dreeping glorped aykal elnur eluned margoth nour tane valter vedrana zake zubward zubable zabgiz maik viesturs nassim abdelkrim emilly'.split(
      ' ',
    ),
  )('not of %s as a name', (word) => {
    expect([isDoubted(word), isDoubted(toCapital(word))]).toEqual([false, true])
  })

  it.each(
    'zibo siya tadeo naveen zaba bofo zrab ndidi tariq kamil theodor vagn ayize wiremu gustav toluwani nazzareno chiamaka zubley zobbage jibbo nnamdi piotr tiziano'.split(
      ' ',
    ),
  )('not of %s at all', (word) => {
    expect([isDoubted(word), isDoubted(toCapital(word))]).toEqual([true, true])
  })
})
