// Words cut as teachers cut them. Common practice, no source.

import { describe, expect, it } from 'vitest'
import { findOtherCuts, readJudgedCuts } from '../../scripts/accuracy/judged-syllables.ts'
import type { Accent } from '../../src/phonics/types.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

const CUT = `
  gen-tly sub-tly sim-ply wob-bly cud-dly prick-ly soft-ly odd-ly fre-er fre-est tru-er gua-va i-gua-na squal-id ap-pe-tiz-ing
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
  build-ing dar-ling ster-ling eve-ning farm-ing warm-ing dis-like mis-place dis-turb dis-ap-pear mi-ser dis-o-bey
  mis-lead dis-miss mis-fit i-ron i-roned four-i-er con-scious gra-cious spa-cious vi-cious a-tro-cious con-fes-sion
  dis-cus-sion ad-mis-sion pos-ses-sion pro-ces-sion e-mo-tion lo-tion po-tion por-tion cau-tion fash-ions pas-sen-ger
  mes-sen-ger let-tuce car-rot cab-bage cot-tage gar-bage vil-lage for-age man-age im-age sav-age dam-age pack-age
  lug-gage cas-ket mus-ket ath-letes broth-er oth-er gath-er leath-er ei-ther nei-ther feath-ers mar-ma-lade
  straw-ber-ry goose-ber-ry black-ber-ry but-ter-cup daf-fo-dil di-no-saur croc-o-diles kan-ga-roo ham-mer sum-mer
  din-ner win-ner rob-ber rub-ber rab-bits kit-tens mit-tens hid-den sud-den bot-tom ap-ples bub-ble bub-bles tum-ble
  tram-ple grum-ble jun-gle jin-gle shin-gle an-gle sprin-kle spar-kle tur-tle bee-tle nee-dle poo-dle cra-dle ta-bles
  sta-ble ca-ble bi-ble ri-fle ruf-fle waf-fle ex-cuse ex-act ox-i-dize box-er mix-er tax-is fix-ing box-ing wax-y
  a-corn a-gent ba-con ba-sin ra-ven ha-zel la-dy la-zy cra-zy na-vy gra-vy i-vy ti-ny sli-my shi-ny po-ny bo-ny
  sto-ny du-ty hab-it lim-it vis-it rap-id sol-id tim-id van-ish fin-ish pun-ish pol-ish rad-ish par-ish mod-el lev-el
  nov-el trav-el cam-el pan-el shov-el riv-ers nev-er ev-er clev-er sev-er to-mor-row yes-ter-day sat-ur-day thurs-day
  mon-day fri-day tues-day sun-day walk-ing talk-ing stand-ing land-ed melt-ed rest-ed paint-ed shout-ed count-ed
  need-ed hand-ed wad-ed kind-ness dark-ness sad-ness hap-pi-ly slow-ly quick-ly nice-ly home-less use-ful help-ful
  hope-ful care-ful care-less play-ful un-hap-py un-do un-kind un-lock re-turn re-play re-do pre-school sub-way
  in-side out-side up-stairs down-stairs some-one no-bod-y tor-na-do vol-ca-no po-ta-toes to-ma-to ba-nan-a
  spa-ghet-ti piz-za um-brel-las gui-tar vi-o-lin pi-an-o trum-pet tri-an-gle al-pha-bet tel-e-phone el-e-phants
  e-lev-en sev-en-teen thir-teen thir-ty four-teen fif-ty six-ty twen-ty for-ty eigh-ty farm-yard barn-yard back-yard
  cup-cake pan-cake rain-bow tooth-brush hair-brush sun-shine moon-light star-fish jel-ly-fish gold-fish bed-room
  bath-room class-room play-room lan-guage pen-guin lin-guist dis-tin-guish queen-ly e-qual se-quel re-quest squir-rel
  mys-tic sys-tem mon-strous in-dus-try ob-struct ex-tract sub-scribe at-mos-phere sci-ence li-ar di-al tri-al vi-al
  bow-el vow-el jew-els flu-ent du-et gi-gan-tic ac-ci-dent dec-i-mal cit-y pit-y lil-y cop-y bod-y stud-y
  fail-ure fig-ure ex-cite ex-cit-ed ex-cept cup-board fa-ther grand-fa-ther ad-dress mat-tress shep-herd lis-ten lis-tened
  fas-ten of-ten call-ing call-er dress-es miss-ing fall-en small-est spell-ing will-ing un-will-ing roll-er dress-er
  but-ter gar-den bub-bled gig-gled han-dled as-sem-bled house-work house-wife else-where fierce-ly care-less-ness
  fu-ri-ous-ly gen-er-ous-ly an-nounce-ment com-fort-a-ble post-age health-y eat-en gold-en weak-en wood-en fright-ened
  east-ern west-ern north-ern fool-ish self-ish steam-er sail-or tai-lor roost-er book-keep-er shoe-mak-er hand-writ-ing
  o-ver-eat o-ver-alls un-der-arm un-guard-ed trans-port de-stroy de-scribe es-cape as-ton-ish mys-te-ri-ous
  an-oth-er for-ev-er when-ev-er up-on with-in with-out an-y-bod-y ev-ery-where no-bod-y be-yond au-gust feb-ru-ar-y
  sep-a-rate tri-cy-cle hos-pi-tal top-soil pre-paid be-gin-ning re-ply op-er-ate sev-eral choc-olate lem-on-ade
  ac-quire ac-quit-ted lac-quer mus-cle mus-cles rus-sian prus-sia im-pas-sioned ex-haust ex-hib-it ad-just sof-ten as-cend
  fas-ci-nate dis-ci-ple knowl-edge sug-ar wom-an coun-cil-wom-an slip-cov-er wash-ing-ton qual-i-ty squal-id sim-i-lar-i-ty
  hand-some sand-wich hand-ker-chief morn-ings fear-less daugh-ter des-ti-ny es-ki-mo cas-cade mis-chief sus-pect as-pire de-spair
  de-spite de-stroyed de-scend-ing un-ex-pect-ed wrong-head-ed re-draft-ed su-per-e-go su-per-son-ic in-ter-ac-tive in-ter-view
  trans-fer trans-form trans-mit trans-par-ent ear-ache gas-tric home-own-er home-stead life-style the-a-tre yah-ya law-yer
  large-ly move-ment care-less-ly type-writ-er no-where un-known en-force-a-ble peace-a-ble change-a-ble bum-per-stick-er cuck-oo
  mi-li-tia ma-gi-cian com-plex-ion con-nex-ion anx-ious ob-nox-ious rott-wei-ler di-shev-eled class-less brass-like cross-ley cat-ar-act ce-ram-ic ten-ure rhyth-m pris-m tour-is-m ten-sion an-cient fi-nan-cial
  par-tial in-er-tia per-sian a-sia com-mer-cial dun-geon de-ci-sion ob-scure mis-lead-ing mish-mash vic-to-ri-a glo-ri-ous
`
  .trim()
  .split(/\s+/)

// The r doubled by the ending parts, that of the stem does not; what ends in -le is cut alike whatever vowel stands behind it.
const KIN = `
  stir-ring blur-ring star-ring scar-ring pre-fer-ring oc-cur-ring spar-ring bar-ring jar-ring purr-ing err-ing
  wob-bly wig-gly gig-gly twin-kly wrig-gly crum-bly tin-gly bub-bly cud-dly fid-dly driz-zly rat-tly
  rus-tling wres-tler tri-pling bat-tler pad-dler mud-dler gig-gler odd-ly stiff-ly bad-ly fur-ry hur-ry
`
  .trim()
  .split(/\s+/)

describe.each(['general-american', 'southern-british'] as const)('%s', (accent: Accent) => {
  it.each([...CUT, ...KIN])('%s', (cut) => {
    expect(testPhonics(accent).read(cut.replaceAll('-', '')).pronunciations[0]?.syllables.join('-')).toBe(cut)
  })

  it.each(['cat', 'fire', 'hour', 'choir', 'tired', 'splashed', 'horse', 'cried'])('%s is one syllable', (word) => {
    expect(testPhonics(accent).read(word).pronunciations[0]?.syllables).toEqual([word])
  })
})

it('cuts words that were drawn by chance and cut by hand first', () => {
  for (const accent of ['general-american', 'southern-british'] as const) {
    const judged = readJudgedCuts()
    expect(judged).toHaveLength(520)
    expect(findOtherCuts(judged, testPhonics(accent))).toEqual(['sup-po-sed-ly'])
  }
})

it('carries the seams of a word along with an ending, and joins words at one', () => {
  const cut = (word: string) => testPhonics('general-american').read(word).pronunciations[0]?.syllables.join('-')
  expect(["steamer's", 'withholds', 'hatshop', 'cup-board'].map(cut)).toEqual([
    "steam-er's",
    'with-holds',
    'hat-shop',
    'cup-board',
  ])
})

it('cuts where two words meet at a hyphen, but not where the first has no vowel', () => {
  const syllables = (word: string) => testPhonics('general-american').read(word).pronunciations[0]?.syllables.join('|')
  expect(['shh-hello', 'b-b-better', 'tee-hee', 'tip-top-tip'].map(syllables)).toEqual([
    'shh-hel|lo',
    'b-b-bet|ter',
    'tee|hee',
    'tip|top|tip',
  ])
})

it('cuts at a hyphen and does not show it', () => {
  expect(testPhonics('general-american').read('tip-top').pronunciations[0]?.syllables).toEqual(['tip', 'top'])
})

it('puts the stress mark before the stressed syllable', () => {
  const ipa = (word: string) => testPhonics('southern-british').read(word).pronunciations[0]?.ipa
  expect(ipa('rabbit')).toMatch(/^ˈræ/)
  expect(ipa('giraffe')).toBe('dʒəˈrɑːf')
  expect(ipa('about')).toBe('əˈbaʊt')
  // Two vowel sounds in one group of letters, and the stress is on the first.
  expect(ipa('iron')).toBe('ˈaɪən')
})
