// Words whose Southern British sound no rule gives. Source: Wells, Accents of English (1982), lexical sets BATH, CLOTH and
// LOT, from memory; each list is checked against an independent synthesiser by the tests.

/** BATH words: the a of these is /ɑː/. Endings follow from the stem. */
export const BATH: ReadonlySet<string> = new Set(
  `advance advantage after aftermath afternoon afterward afterwards alas answer ask aunt auntie avalanche banana basket basketball
  bask bath bathroom bathrobe blast bombastic branch brass broadcast calf calve cask casket cast castle castaway chaff chance chancellor chant
  clasp class classmate classroom classy command commander contrast craft aircraft craftsman daft dance dancer demand disaster
  disastrous draft draught drastic enchant enhance example fast fasten fasting fastball flabbergast flask forecast france
  gasp ghastly giraffe glance glass glassware sunglass sunglasses graft grant graph paragraph photograph autograph telegraph
  grasp grass grassy half halve halfway behalf hereafter thereafter lance last lasting lather laugh laughter lath mask mast master headmaster
  masterpiece mastermind nasty outcast overcast pass passport password past pastor pasture path pathway footpath plant plaster plasterer
  prance raft rafter ranch rascal rasp rather repast reprimand sample salve shaft shan't can't slander slant staff surpass task
  taskmaster telecast trance transplant vast vantage wrath aghast bypass underpass overpass trespass
  lambast caste freelance freelancer schoolmaster webmaster toastmaster grandmaster soprano
  sandcastle steadfast witchcraft hovercraft spacecraft handcraft staffer seagrass iraq pakistan`.split(/\s+/),
)

/** Words with /ɒ/ where a rule would give /ɔː/: an open o before r and a vowel, and au or a said short. */
export const SHORT_O: ReadonlySet<string> = new Set(
  `orange forest foreign foreigner florist florida historic historical authority majority minority priority sorority
  coral moral morality immoral oracle orator oratory porridge horoscope categorical rhetorical allegorical metaphorical
  sporran torrent torrential warrant warrior quarrel quarry horror horrid horrible horrify borrow sorrow sorry tomorrow
  origin original corridor correspond corrupt coronation corona incorrigible correlate coroner forage
  seniority superiority inferiority moronic euphoric lorry lorries laurel laurence lawrence
  because sausage cauliflower austria austrian australia australian
  warranty dorothy doris florence florentine`.split(/\s+/),
)

/** `ar` before a vowel said as in `carry` where the letters after it would make it long: `chariot`. */
export const SHORT_A: ReadonlySet<string> = new Set(
  'chariot mario marion marionette clarion harriet carrie arial'.split(' '),
)

/** `ar` before a vowel said as in `care` where a rule would make it short. */
export const LONG_A: ReadonlySet<string> = new Set(
  'parent parental sarah pharaoh area garish sharon aaron tiara bulgarian'.split(' '),
)

/**
 * Single words, as changes to the sounds of their letters: `letters>sound`, a number for the second such unit.
 * One row a word; what American and British speakers say differently in that word alone.
 */
export const CHANGES: ReadonlyMap<string, string> = new Map(
  Object.entries({
    again: 'ai>eɪ',
    against: 'ai>eɪ',
    been: 'ee>iː',
    borough: 'or>ʌr ough>ə',
    clerk: 'er>ɑː',
    data: 'a>eɪ a2>ə',
    derby: 'er>ɑː',
    docile: 'o>əʊ i_e>aɪ',
    dynasty: 'y>ɪ',
    edinburgh: 'urgh>ərə',
    either: 'ei>aɪ',
    neither: 'ei>aɪ',
    era: 'e>ɪə',
    figure: 'ure>ə',
    fragile: 'le>aɪl',
    from: 'o>ɒ',
    futile: 'i_e>aɪ',
    garage: 'a>æ a2>ɑː',
    herb: 'h>h',
    hostile: 'i_e>aɪ',
    leisure: 'ei>ɛ',
    lever: 'e>iː',
    lieutenant: 'ieu>ɛf',
    missile: 'i_e>aɪ',
    mobile: 'i_e>aɪ',
    moustache: 'ou>ə a>ɑː',
    mustache: 'u>ə a>ɑː',
    of: 'o>ɒ',
    patriot: 'a>æ',
    privacy: 'i>ɪ',
    process: 'o>əʊ',
    progress: 'o>əʊ',
    project: 'o>ɒ',
    route: 'ou>uː',
    shone: 'o_e>ɒ',
    sterile: 'i_e>aɪ',
    tomato: 'a>ɑː',
    vase: 'a_e>ɑː s>z',
    vitamin: 'i>ɪ',
    was: 'a>ɒ',
    wasn: 'a>ɒ',
    "wasn't": 'a>ɒ',
    what: 'a>ɒ',
    whatever: 'a>ɒ',
    somewhat: 'a>ɒ',
    wrath: 'a>ɒ',
    yoghurt: 'o>ɒ',
    yogurt: 'o>ɒ',
    zebra: 'e>ɛ',
    "what's": 'a>ɒ',
    anybody: 'o>ɒ',
    somebody: 'o>ɒ',
    nobody: 'o2>ɒ',
    without: 'th>ð',
    water: 'a>ɔː',
    underwater: 'a>ɔː',
    waterfall: 'a>ɔː',
    figures: 'ure>ə',
    yacht: 'a>ɒ',
    whatsoever: 'a>ɒ',
    resource: 's>z',
    thorough: 'or>ʌr ough>ə',
  }),
)

/** A second way to say a word that is as common in Britain as the first, written as above: dictionaries give both. */
export const ALSO: ReadonlyMap<string, string> = new Map([['ate', 'a_e>ɛ']])
