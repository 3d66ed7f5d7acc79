// Words that are written otherwise in Britain than in America, and said alike: the dictionary is American.
// From memory; common knowledge of spelling, no source.

/** American and British, by the American word. A form in -s, -ed, -ing, -er, -ful, -less or -y is made of either. Sorted. */
const PAIRS =
  'airplane/aeroplane analyze/analyse apologize/apologise armor/armour behavior/behaviour caliber/calibre catalog/catalogue center/centre color/colour cozy/cosy defense/defence dialog/dialogue donut/doughnut endeavor/endeavour favor/favour favorite/favourite fiber/fibre flavor/flavour glamor/glamour gray/grey harbor/harbour honor/honour humor/humour jewelry/jewellery kilometer/kilometre labor/labour licorice/liquorice liter/litre luster/lustre maneuver/manoeuvre meager/meagre mold/mould mustache/moustache neighbor/neighbour neighborhood/neighbourhood odor/odour offense/offence pajama/pyjama pajamas/pyjamas paralyze/paralyse parlor/parlour plow/plough rumor/rumour savior/saviour savor/savour scepter/sceptre skillful/skilful somber/sombre splendor/splendour theater/theatre tumor/tumour vapor/vapour vigor/vigour woolen/woollen'

/** Said otherwise too, or another word: for lists only. Sorted. */
const WORDS = 'aluminum/aluminium diaper/nappy faucet/tap gotten/got math/maths mom/mum mommy/mummy sidewalk/pavement'

const ENDINGS = ['', 's', 'ed', 'ing', 'er', 'ers', 'ful', 'less', 'y'] as const
const DOUBLED = /^(cancel|equal|fuel|jewel|label|level|marvel|model|pedal|signal|travel|tunnel)(ed|ing|er|ers)$/
/** `organize`, `realized`: longer than `prize`, and no `size` in it. */
const IZE = /^(\p{L}{3,}[^s\P{L}])iz(e|es|ed|er|ers|ing|ation|ations)$/u

const toPairs = (written: string) =>
  written.split(' ').map((pair) => pair.split('/') as [american: string, british: string])

interface Pairs {
  readonly british: ReadonlyMap<string, string>
  readonly american: ReadonlySet<string>
}

let pairs: Pairs | undefined

/** British words by American ones and all British ones; made when they are first asked for, since most checks never do. */
function openPairs(): Pairs {
  if (pairs !== undefined) return pairs
  const british = new Map(
    toPairs(PAIRS).flatMap(([american, british]) =>
      ENDINGS.map((ending) => [join(american, ending), join(british, ending)] as const),
    ),
  )
  pairs = { british, american: new Set(british.values()) }
  return pairs
}

const ONLY_AMERICAN = new Map(toPairs(WORDS))
const ONLY_BRITISH = new Set(['aluminium', 'maths', 'mum', 'mummy', 'nappy'])

/** `analyze` and `ing`: the e goes. */
function join(word: string, ending: string): string {
  return /^[aeiouy]/.test(ending) && word.endsWith('e') ? word.slice(0, -1) + ending : word + ending
}

/** How an American word is written in Britain, where it is said alike; undefined where it is written the same. */
export function toBritish(word: string): string | undefined {
  const known = openPairs().british.get(word)
  if (known !== undefined) return known
  const [, stem, ending] = DOUBLED.exec(word) ?? []
  if (stem !== undefined) return `${stem}l${ending}`
  return IZE.test(word) && !/(size|prize|seize)/.test(word) ? word.replace(/iz(?=[^z]*$)/, 'is') : undefined
}

/** Whether a list for this accent does without the word: it is written, or said, otherwise there. */
export function isForeignSpelling(word: string, accent: 'general-american' | 'southern-british'): boolean {
  const plain = word.toLowerCase()
  if (accent === 'southern-british') return ONLY_AMERICAN.has(plain) || toBritish(plain) !== undefined
  return ONLY_BRITISH.has(plain) || openPairs().american.has(plain)
}
