// The small words of English that show what kind of word stands next to them, by group.

const words = (list: string): ReadonlySet<string> => new Set(list.split(' '))

/** Stand before a noun, or before an adjective and its noun, and before nothing else. */
export const DETERMINERS = words(
  'a an the my your his her its our their no every each another whose this any',
)
/** Stand before a plural noun; before a verb they can be its subject, so they count for -s forms only. */
export const PLURAL_DETERMINERS = words(
  'the my your his her its our their these those some any no all both many few several more most other ' +
    'two three four five six seven eight nine ten twelve twenty hundred lots',
)
export const POSSESSIVES = words('my your his her its our their')
export const NUMBERS = words(
  'one two three four five six seven eight nine ten eleven twelve twenty thirty fifty hundred thousand',
)
export const SUBJECTS = words('i we they you he she it')
export const PLURAL_SUBJECTS = words('i we they you')
/** Subjects that take -s in the present, so that a bare form after them is past. */
export const SINGULAR_SUBJECTS = words(
  'he she it everyone everybody someone somebody nobody anyone anybody',
)
export const OBJECTS = words('me you him her it us them')
/** Begin an object after a verb: `close the gate`, `wind it`. */
export const OBJECT_STARTS = words(
  'a an the my your his her its our their this that these those me you him it us them some every each no',
)
export const MODALS = words(
  "will would can could shall should may might must cannot can't won't wouldn't couldn't shouldn't mustn't " +
    "do does did don't doesn't didn't let's i'll you'll he'll she'll it'll we'll they'll who'll that'll",
)
export const BE = words(
  "be am is are was were been being isn't aren't wasn't weren't i'm you're we're they're it's he's she's that's " +
    "who's there's what's here's where's",
)
export const HAVE = words("has have had having hasn't haven't hadn't i've you've we've they've who've")
/** `let me use it`: what follows the object is a bare verb. */
export const LET = words('let lets help helps helped helping')
/** `make it live`, `make it perfect`: a bare verb or an adjective follows the object. */
export const MAKE = words('make makes made making keep keeps kept find finds found')
/** `saw her use it`, `saw her record`: nothing can be told. */
export const PERCEIVE = words('see sees saw watch watches watched hear hears heard feel feels felt had have has')
/** Look like prepositions of a noun and can hardly be anything else. */
export const PREPOSITIONS = words('of for from with in at without into about under by on')
/** After these, `to` stands before a noun: `next to lead`. */
export const BEFORE_NOUN_TO = words('next close due thanks according similar near addicted led lead leads put')
/** Can stand between a helper and its verb without changing what follows. */
export const ADVERBS = words(
  'not never always often also just now still only ever really soon then quickly slowly gently both all again ' +
    'usually sometimes already almost please',
)
export const LINKING = words(
  'look looks looked seem seems seemed sound sounds sounded stay stays stayed stand stands stood sit sits sat ' +
    'come comes came draw drew drawn coming keep keeps kept',
)
export const DEGREES = words('very too quite how rather')
/** Begin a clause, so that a bare word after them can be an order or a further verb. */
export const CLAUSE_STARTS = words('and or but then so please')
/** Adjectives of children's text that are hardly ever anything else. */
export const ADJECTIVES = words(
  'bad big black blue brave bright broken brown clean clever cold cool dark dear deep dirty dry easy empty fat fierce ' +
    'fine flat fresh funny gentle glad good great green grey happy hard heavy high hot huge important kind large last ' +
    'lazy little long loud low main mad neat new nice odd old only own pink poor pretty proud public quick quiet red ' +
    'rich rough round sad safe secret sharp short shy silly slow small smart soft special strange strong sudden sweet ' +
    'tall terrible thick thin tiny true ugly warm weak wet whole wide wild wise wonderful wrong yellow young best ' +
    'better worst biggest oldest first second third next same different real school daily weekly favourite favorite',
)
/** Of those, the ones that also stand alone before a verb: `First read the rules`. */
export const LOOSE_ADJECTIVES = words('last first second third next best better hard long low high round wrong own only')
