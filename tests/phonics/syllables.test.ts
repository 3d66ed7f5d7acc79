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
  pas-sion pres-sure pre-cious re-gion de-li-cious ra-cial na-tion ac-tion ques-tion pic-ture na-ture wres-tle this-tle
  tack-le tem-ple sim-ple han-dle bot-tle ma-ple ti-tle no-ble peo-ple ea-gle me-tre cen-tre a-cre
  rid-ing hop-ing bak-ing writ-ing wait-ing sleep-ing ask-ing help-ing hand-ing bub-bling puz-zling sing-ing sing-er fin-ger
  hun-ger fat-test hot-test kind-est cold-est nic-est ex-tra ex-it ox-en ex-press ex-plore mix-ture six-teen
  weath-er feath-er bish-op cush-ion buck-et rock-et hatch-et mon-key tur-key par-rot fer-ret wor-ry cher-ry ar-row bor-row
  a-rise a-ro-ma e-rase e-rupt or-ange flor-ist chor-us dair-y hair-y ju-ry cu-ri-ous se-ri-ous pe-ri-od ce-re-al
  mu-se-um po-et gi-ant di-et flu-id ru-in du-el jew-el tow-el show-er di-ar-y ri-ot tri-umph ra-di-o on-ion
  mil-lion bril-liant fa-mil-iar cham-pi-on guar-di-an mis-print dis-tance dis-play dis-gust his-to-ry mys-ter-y mis-ty
  dus-ty ham-ster lob-ster in-stant in-spect trans-late con-trol con-trast com-plete hun-gry an-gry se-cret
  ze-bra a-pron co-bra e-lec-tric dis-trict sub-tract con-struct um-brel-la oc-to-pus croc-o-dile al-li-ga-tor
  hip-po-pot-a-mus cat-er-pil-lar
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
