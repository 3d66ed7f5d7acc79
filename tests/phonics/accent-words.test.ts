// What both accents make of letters that few words have. As dictionaries of the two accents give them (Wells, Longman Pronunciation Dictionary;
// the American ones as the CMU Pronouncing Dictionary has them), from memory. Which of ɪ and ə a weak vowel is depends on who wrote the dictionary.

import { describe, expect, it } from 'vitest'
import type { Accent } from '../../src/phonics/types.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

const loose = (ipa: string): string => ipa.replace(/[ˈˌ]/g, '').replace(/ɪ(?!ə)/g, 'ə')

const WORDS = `
  CLOTH and LOT under other letters than o: gone ɡɔn ɡɒn, cough kɔf kɒf, trough trɔf trɒf, knowledge nɑlɪdʒ nɒlɪdʒ, john dʒɑn dʒɒn,
    yacht jɑt jɒt, sausage sɔsɪdʒ sɒsɪdʒ, austria ɔstriːə ɒstriːə, laurel lɔrəl lɒrəl
  words from France: encore ɑnkɔr ɒnkɔː, ensemble ɑnsɑmbəl ɒnsɒmbəl, genre ʒɑnrə ʒɒnrə, rendezvous rɑndɪvuː rɒndɪvuː, facade fəsɑd fəsɑːd,
    esplanade ɛsplənɑd ɛsplənɑːd, garage ɡərɑʒ ɡærɑːʒ
  PALM: ah ɑ ɑː, baa bɑ bɑː, father fɑðər fɑːðə, calm kɑm kɑːm, palms pɑmz pɑːmz
  THOUGHT: walk wɔk wɔːk, talk tɔk tɔːk, chalk tʃɔk tʃɔːk, fall fɔl fɔːl, fallen fɑlən fɔːlən, calling kɔlɪŋ kɔːlɪŋ, smaller smɔlər smɔːlə,
    taught tɔt tɔːt, fought fɔt fɔːt, broad brɔd brɔːd, always ɔlweɪz ɔːlweɪz, walnut wɔlnʌt wɔːlnʌt
  an a behind w: swallow swɑloʊ swɒləʊ, wallet wɔlɪt wɒlɪt, quality kwɑlɪtiː kwɒlɪtiː, squash skwɑʃ skwɒʃ, unwashed ʌnwɑʃt ʌnwɒʃt
  BATH: laugh læf lɑːf, laughing læfɪŋ lɑːfɪŋ, draught dræft drɑːft, half hæf hɑːf, aunt ænt ɑːnt, auntie æntiː ɑːntiː, aunty æntiː ɑːntiː,
    example ɪɡzæmpəl ɪɡzɑːmpəl, gas ɡæs ɡæs, plaid plæd plæd
  a glide behind u: usual juːʒuːəl juːʒuːəl, actual æktʃuːəl æktʃuːəl, graduate ɡrædʒuːeɪt ɡrædʒuːeɪt, genuine dʒɛnjuːɪn dʒɛnjuːɪn,
    tenuous tɛnjuːəs tɛnjuːəs, quick kwɪk kwɪk
  yod behind t, d and n alone: tune tuːn tjuːn, duke duːk djuːk, new nuː njuː, costume kɑstuːm kɒstjuːm, student stuːdənt stjuːdənt,
    endure ɛndjʊr ɛndjʊə, mature mətʃʊr mətʃʊə, during dʊrɪŋ djʊərɪŋ, attune ətuːn ətjuːn, lute luːt luːt, suit suːt suːt, noon nuːn nuːn,
    too tuː tuː, tour tʊr tʊə, pure pjʊr pjʊə, sure ʃʊr ʃʊə, dew duː djuː, neutral nuːtrəl njuːtrəl
  an r before a vowel: bury bɛriː bɛriː, burial bɛriːəl bɛriːəl, necessarily nɛsɪsɛrəliː nɛsɪsɛrəliː, bearing bɛrɪŋ bɛərɪŋ,
    caring kɛrɪŋ kɛərɪŋ, parents pɛrənts pɛərənts, chariots tʃɛriːəts tʃæriːəts, fairy fɛriː fɛəriː,
    carries kæriːz kæriːz, wearily wɪrəliː wɪərəliː, stories stɔriːz stɔːriːz, forests fɔrɪsts fɒrɪsts, boring bɔrɪŋ bɔːrɪŋ, glories ɡlɔriːz ɡlɔːriːz
  weak ends in -ary, -ery and -ory: library laɪbrɛriː laɪbrəriː, libraries laɪbrɛriːz laɪbrəriːz, secretary sɛkrətɛriː sɛkrətəriː,
    laboratory læbrətɔriː læbrətəriː, territory tɛrɪtɔriː tɛrɪtəriː, paramilitary pɛrəmɪlɪtɛriː pærəmɪlɪtəriː
  -mony: ceremony sɛrəmoʊniː sɛrəməniː, ceremonies sɛrəmoʊniːz sɛrəməniːz, alimony æləmoʊniː æləməniː, harmony hɑrməniː hɑːməniː, money mʌniː mʌniː,
    moment moʊmənt məʊmənt
  NURSE: hurry hɜriː hʌriː, worry wɜriː wʌriː, courage kɜrədʒ kʌrədʒ, squirrel skwɜrəl skwɪrəl, squirrels skwɜrəlz skwɪrəlz,
    stirring stɜrɪŋ stɜːrɪŋ, furry fɜriː fɜːriː, purring pɜrɪŋ pɜːrɪŋ, stirred stɜrd stɜːd, runners rʌnərz rʌnəz, longer lɔŋɡər lɒŋɡə,
    edinburgh ɛdənbəroʊ ɛdənbərə
  words of Britain that the American dictionary lacks: pram præm præm, welly wɛliː wɛliː, conker kɑŋkər kɒŋkə, settee sɛtiː sɛtiː, stoat stoʊt stəʊt,
    satchel sætʃəl sætʃəl, pasty pæstiː pɑːstiː, sandcastle sændkæsəl sændkɑːsəl, treacle triːkəl triːkəl, duvet duːveɪ djuːveɪ, copse kɑps kɒps,
    footy fʊtiː fʊtiː, gosling ɡɑzlɪŋ ɡɒzlɪŋ, motorway moʊtərweɪ məʊtəweɪ, sporran spɔrən spɒrən, nought nɔt nɔːt, pud pʊd pʊd
  names of Britain: callum kæləm kæləm, evie iːviː iːviː, imogen ɪmədʒən ɪmədʒən, sian ʃɑn ʃɑːn, arlo ɑrloʊ ɑːləʊ, albie ælbiː ælbiː
  an r over an apostrophe: they're ðɛr ðɛə, we're wɪr wɪə, you're jʊr jʊə
  an a or i that stands before r and is no vowel with it: arrive əraɪv əraɪv, around əraʊnd əraʊnd, parade pəreɪd pəreɪd, mirror mɪrər mɪrə,
    spirit spɪrɪt spɪrɪt, hero hɪroʊ hɪərəʊ, here hɪr hɪə, iron aɪərn aɪən`

const blocks = WORDS.trim()
  .split(/\n {2}(?=\S)/)
  .map((block) => {
    const [heading = '', list = ''] = block.split(/: /)
    return { heading, lines: list.split(/,\s+/).map((line) => line.trim().split(' ') as [string, string, string]) }
  })

describe.each(blocks)('$heading', ({ lines }) => {
  it.each(lines)('%s is said %s, and %s in Britain', (word, american, british) => {
    const said = (accent: Accent) =>
      testPhonics(accent)
        .read(word)
        .pronunciations.map(({ ipa }) => loose(ipa))
    expect(said('general-american')).toContain(loose(american))
    expect(said('southern-british')).toContain(loose(british))
  })
})

// America has two ways where the dictionary writes LOT and THOUGHT; Britain has one.
it.each('walk talk chalk fall call tall caught because auction'.split(' '))('%s has one vowel in Britain', (word) => {
  expect(testPhonics('southern-british').read(word).pronunciations).toHaveLength(1)
})
