// Words cut as teachers cut them. Common practice, no source.

import { describe, expect, it } from 'vitest'
import type { Accent } from '../../src/phonics/types.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

const CUT = `
  rab-bit pic-nic ti-ger ta-ble pock-et kitch-en mon-ster riv-er jump-ing run-ning hur-ry sto-ry sto-ries glo-ry
  flow-er pow-er gi-raffe a-round vi-sion tel-e-vi-sion fash-ion sta-tion mis-sion cam-er-a dif-fer-ent but-ton wa-ter
  win-ter win-dow yel-low pur-ple ap-ple lit-tle can-dle un-cle pick-le an-kle chil-dren hun-dred el-e-phant but-ter-fly
  po-ta-to an-i-mal fam-i-ly gar-den pa-per ro-bot mu-sic o-pen lem-on sev-en li-on po-em qui-et home-work some-times
  some-thing sun-set foot-ball teach-er play-ground moth-er dol-phin pump-kin in-sect ath-lete os-trich ex-plain tax-i
  be-fore to-day a-gain want-ed hunt-ed big-ger big-gest hap-py ba-by ze-ro he-ro for-est par-ent ver-y fair-y car-ry
  cas-tle whis-tle spe-cial mis-take morn-ing o-cean pi-geon sur-geon pa-tient so-cial dis-cov-er mis-ter dis-tant
  drib-bling gig-gling tod-dler hap-pi-ness noth-ing star-ling hoo-ray ear-ring fu-ry
  em-pire i-de-a cre-ate be-ing cru-el ski-ing bus-es box-es dish-es hors-es
`
  .trim()
  .split(/\s+/)

describe.each(['general-american', 'southern-british'] as const)('%s', (accent: Accent) => {
  it.each(CUT)('%s', (cut) => {
    expect(testPhonics(accent).read(cut.replaceAll('-', '')).pronunciations[0]?.syllables.join('-')).toBe(cut)
  })

  it.each(['cat', 'fire', 'hour', 'choir', 'tired', 'splashed', 'horse', 'cried'])('%s is one syllable', (word) => {
    expect(testPhonics(accent).read(word).pronunciations[0]?.syllables).toEqual([word])
  })
})

it('cuts at a hyphen and does not show it', () => {
  expect(testPhonics('general-american').read('tip-top').pronunciations[0]?.syllables).toEqual(['tip', 'top'])
})

it('puts the stress mark before the stressed syllable', () => {
  const ipa = (word: string) => testPhonics('southern-british').read(word).pronunciations[0]?.ipa
  expect(ipa('rabbit')).toMatch(/^ˈræ/)
  expect(ipa('giraffe')).toBe('dʒəˈrɑːf')
  expect(ipa('about')).toBe('əˈbaʊt')
})
