// Words that are written otherwise in Britain than in America, and said alike: the dictionary is American.
// From memory; common knowledge of spelling, no source.

import { remember } from './remember.ts'
import type { Accent } from './types.ts'

/** American and British, by the American word. A form in -s, -ed, -ing, -er, -ful, -less or -y is made of either: a pair with no other forms stands in `WHOLE`. Sorted. */
const PAIRS =
  'airplane/aeroplane analyze/analyse apologize/apologise arbor/arbour archeologist/archaeologist archeology/archaeology ardor/ardour armor/armour ax/axe behavior/behaviour behavioral/behavioural caliber/calibre candor/candour catalog/catalogue center/centre centimeter/centimetre clamor/clamour color/colour counselor/counsellor cozy/cosy defense/defence demeanor/demeanour dialog/dialogue discolor/discolour dishonor/dishonour donut/doughnut draftsman/draughtsman endeavor/endeavour favor/favour favorable/favourable favorite/favourite fervor/fervour fiber/fibre fiberglass/fibreglass flavor/flavour glamor/glamour gray/grey grayish/greyish harbor/harbour honor/honour honorable/honourable humor/humour installment/instalment jewelry/jewellery kilometer/kilometre labor/labour licorice/liquorice liter/litre louver/louvre luster/lustre maneuver/manoeuvre maneuverable/manoeuvrable marvelous/marvellous meager/meagre milliliter/millilitre millimeter/millimetre miter/mitre mold/mould molt/moult multicolored/multicoloured mustache/moustache neighbor/neighbour neighborhood/neighbourhood neighborly/neighbourly ocher/ochre odor/odour offense/offence omelet/omelette pajama/pyjama pajamas/pyjamas paralyze/paralyse parlor/parlour plow/plough pretense/pretence rancor/rancour rigor/rigour rumor/rumour saber/sabre savior/saviour savor/savour scepter/sceptre skeptic/sceptic skeptical/sceptical skepticism/scepticism skillful/skilful smolder/smoulder snowplow/snowplough somber/sombre specter/spectre splendor/splendour sulfur/sulphur theater/theatre tumor/tumour unfavorable/unfavourable valor/valour vapor/vapour vigor/vigour watercolor/watercolour willful/wilful woolen/woollen wooly/woolly worshiped/worshipped worshiper/worshipper worshiping/worshipping'

/** The same, where the forms are written alike: `fulfilled`, or there are none. Sorted. */
const WHOLE = 'aging/ageing enroll/enrol enrolls/enrols fulfill/fulfil fulfills/fulfils'

/** Said otherwise too, or another word: for lists only. Sorted. */
const WORDS =
  'aluminum/aluminium diaper/nappy diapers/nappies faucet/tap faucets/taps flashlight/torch flashlights/torches gotten/got mailman/postman math/maths mom/mum mommies/mummies mommy/mummy moms/mums pacifier/dummy pacifiers/dummies sidewalk/pavement sidewalks/pavements stroller/pushchair strollers/pushchairs'

/** British spellings that America has too, beside its own or before it. Sorted. */
const BOTH = new Set(
  'archaeologist archaeology axe catalogue dialogue doughnut glamour moustache omelette sceptre theatre woollen'.split(
    ' ',
  ),
)

const ENDINGS = ['', 's', 'ed', 'ing', 'er', 'ers', 'ful', 'less', 'y'] as const
/** What doubles its l in Britain alone. Sorted. */
const DOUBLERS =
  'cancel|channel|chisel|counsel|dial|duel|equal|fuel|funnel|grovel|jewel|kennel|label|level|libel|marvel|medal|model|panel|pedal|pencil|quarrel|rival|shovel|shrivel|signal|snivel|snorkel|spiral|stencil|swivel|total|towel|travel|trowel|tunnel|unravel|yodel'
const SINGLE = new RegExp(`^(${DOUBLERS})(ed|ing|er|ers)$`)
const DOUBLED = new RegExp(`^(${DOUBLERS})l(ed|ing|er|ers)$`)
/** What both of them end in, to be asked first. */
const ENDS_WITH_L = /l(?:ed|ing|ers?)$/
/** `organize`, `realized`: longer than `prize`, and no `size` in it. Made when asked: V8 is slow with its classes. */
const isInIze = (word: string): boolean =>
  /^(\p{L}{3,}[^s\P{L}])iz(e|es|ed|er|ers|ing|ation|ations)$/u.test(word) && !/(size|prize|seize)/.test(word)

type Side = 'american' | 'british'
type Pair = readonly [american: string, british: string]

const toPairs = (written: string): readonly Pair[] =>
  written.split(' ').map((pair) => pair.split('/') as [american: string, british: string])

interface Tables {
  readonly formed: ReadonlyMap<string, string>
  readonly whole: ReadonlyMap<string, string>
  /** How their words begin. Every word of a story is asked for, and nearly none begins so. */
  readonly starts: ReadonlySet<string>
}

const START = 4
const START_OF_AX = 2

const opened: Partial<Record<Side, Tables>> = {}

/** The words of the other land by those of one; made when they are first asked for, since most runs never do. */
function openTables(from: Side): Tables {
  const known = opened[from]
  if (known !== undefined) return known
  const toTable = (written: string) =>
    new Map(
      toPairs(written).map(([american, british]) => (from === 'american' ? [american, british] : [british, american])),
    )
  const [formed, whole] = [toTable(PAIRS), toTable(WHOLE)]
  const starts = new Set([...formed.keys(), ...whole.keys()].map((word) => word.slice(0, START)))
  const tables = { formed, whole, starts }
  opened[from] = tables
  return tables
}

let onlyAmerican: ReadonlyMap<string, string> | undefined
const isOnlyAmerican = (word: string): boolean => (onlyAmerican ??= new Map(toPairs(WORDS))).has(word)
const ONLY_BRITISH = new Set([
  'aluminium',
  'maths',
  'mum',
  'mummies',
  'mummy',
  'mums',
  'nappies',
  'nappy',
  'pushchair',
  'pushchairs',
  'yoghurt',
  'yoghurts',
])

/** `analyze` and `ing`: the e goes. */
function join(word: string, ending: string): string {
  return /^[aeiouy]/.test(ending) && word.endsWith('e') ? word.slice(0, -1) + ending : word + ending
}

/** The word as the other land writes it by the pairs; undefined where they do not have it, or it is written the same. */
function findInPairs(word: string, from: Side): string | undefined {
  const { formed, whole, starts } = openTables(from)
  if (!starts.has(word.slice(0, START)) && !starts.has(word.slice(0, START_OF_AX))) return undefined
  const other = whole.get(word)
  if (other !== undefined) return other
  for (const ending of ENDINGS) {
    if (!word.endsWith(ending)) continue
    const stem = word.slice(0, word.length - ending.length)
    const base = [stem, `${stem}e`].find((one) => formed.has(one) && join(one, ending) === word)
    const found = base === undefined ? word : join(formed.get(base) ?? base, ending)
    if (found !== word) return found
  }
  return undefined
}

const double = (word: string): string | undefined => {
  const [, stem, ending] = (ENDS_WITH_L.test(word) && SINGLE.exec(word)) || []
  return stem === undefined ? undefined : `${stem}l${ending}`
}

/** How an American word is written in Britain, where it is said alike; undefined where it is written the same. */
export function toBritish(word: string): string | undefined {
  const known = findInPairs(word, 'american') ?? double(word)
  if (known !== undefined) return known
  return isInIze(word) ? word.replace(/iz(?=[^z]*$)/, 'is') : undefined
}

/** How a British word is written in America, where it is never written so; nothing is said of -ise. */
function toAmerican(word: string): string | undefined {
  const [, stem, ending] = (ENDS_WITH_L.test(word) && DOUBLED.exec(word)) || []
  if (stem !== undefined) return `${stem}${ending}`
  return isOfBoth(word) ? undefined : findInPairs(word, 'british')
}

const isOfBoth = (word: string): boolean => BOTH.has(word) || (word.endsWith('s') && BOTH.has(word.slice(0, -1)))

/**
 * The right form of a word that is written as in the other land; undefined for all other words. British books write -ize too, so that
 * it is no slip there.
 */
export const findOtherSpelling = (word: string, accent: Accent): string | undefined => findOther[accent](word)

const toPlain = (word: string): string => word.toLowerCase().replace(/['’]s$/, '')

/** Every word of every story is asked about. */
const findOther: Readonly<Record<Accent, (word: string) => string | undefined>> = {
  'general-american': remember((word) => toAmerican(toPlain(word))),
  'southern-british': remember((word) => findInPairs(toPlain(word), 'american') ?? double(toPlain(word))),
}

/** Whether a list for this accent does without the word: it is written, or said, otherwise there. */
export function isForeignSpelling(word: string, accent: Accent): boolean {
  const plain = word.toLowerCase()
  if (accent === 'southern-british') return isOnlyAmerican(plain) || toBritish(plain) !== undefined
  return ONLY_BRITISH.has(plain) || (!isOfBoth(plain) && findInPairs(plain, 'british') !== undefined)
}
