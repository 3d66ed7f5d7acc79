// The small words of English that show what kind of word stands next to them, by group.

export const words = (list: string): ReadonlySet<string> => new Set(list.split(' '))

/** Whether a word of the sentence is of a group; what stands beyond the edge of a sentence is of none. */
export const has = (group: ReadonlySet<string | undefined>, word: string | undefined): boolean => group.has(word)

/** Stand before a noun, or before an adjective and its noun, and before nothing else. */
export const DETERMINERS = words('a an the my your his her its our their no every each another whose this any')
/** Stand before a plural noun; before a verb they can be its subject, so they count for -s forms only. */
export const PLURAL_DETERMINERS = words(
  'the my your his her its our their these those some any no all both many few several more most other ' +
    'two three four five six seven eight nine ten twelve twenty hundred lots countless multiple numerous various',
)
/** Many, with no -s. */
export const PLURALS = words('children people men women mice geese sheep fish police')
/** Stand for many that do something: `many use it`, `most of them`. */
export const MANY = words('all both few many most others some children people')
export const WHOLES = words('all both')
export const POSSESSIVES = words('my your his her its our their')
export const NUMBERS = words(
  'two three four five six seven eight nine ten eleven twelve twenty thirty fifty hundred thousand',
)
/** Marks that part what is said from what comes before. */
export const STOPS = words('. ! ? ; : “ ” "')
export const SUBJECTS = words('i we they you he she it')
export const PLURAL_SUBJECTS = words('i we they you')
/** Subjects that take -s in the present, so that a bare form after them is past. */
export const SINGULAR_SUBJECTS = words('he she it everyone everybody someone somebody nobody anyone anybody')
export const OBJECTS = words('me you him her it us them')
/** Begin an object after a verb: `close the gate`, `wind it`. */
export const OBJECT_STARTS = words(
  'a an the my your his her its our their this that these those me you him it us them some every each no ' +
    'another anybody anything anyone everybody everything everyone nobody somebody something someone nothing mine yours hers ours theirs yourself yourselves',
)
export const MODALS = words(
  "will would can could shall should may might must cannot can't won't wouldn't couldn't shouldn't mustn't " +
    "do does did dost doth don't doesn't didn't dare needn't mightn't gonna wanna gotta let's i'll you'll he'll she'll it'll we'll they'll who'll that'll",
)
export const BE = words(
  "be am is are was were been being isn't aren't wasn't weren't i'm you're we're they're it's he's she's that's " +
    "who's there's what's here's where's",
)
export const HAVE = words(
  "has have had having hasn't haven't hadn't i've you've we've they've who've could've might've must've should've would've",
)
/** `can help combat it`: what follows is a bare verb. */
export const HELP = words('help helps helped helping')
/** `let me use it`: what follows the object is a bare verb. */
export const LET: ReadonlySet<string> = new Set([...words('let lets'), ...HELP])
/** `try and protest`: what follows `and` is a bare verb. */
export const TRY = words('try come go')
/** `make it live`, `make it perfect`: a bare verb or an adjective follows the object. */
export const MAKE = words('make makes made making keep keeps kept find finds found')
/** `heard him read it`: what follows the object is a bare verb, or says where it is. */
export const SENSE = words('see sees saw seen watch watches watched hear hears heard feel feels felt')
/** `saw her use it`, `saw her record`: nothing can be told. */
export const PERCEIVE: ReadonlySet<string> = new Set([...SENSE, ...words('had have has')])
/** `grew so close`: what follows is what somebody becomes. */
export const GROW = words(
  'get gets got grow grows grew become becomes became feel feels felt look looks looked seem seems seemed',
)
/** Look like prepositions of a noun and can hardly be anything else. */
export const PREPOSITIONS = words('of for from with in at without into about under by on')
/** The same, and those that say where a thing is. */
export const ALL_PREPOSITIONS: ReadonlySet<string> = new Set([
  ...PREPOSITIONS,
  ...words(
    'above across after against along among around before behind below beside between beyond down during inside like near off outside over past round than through to toward towards under up upon',
  ),
])
/** Stand as a thing too: `red and orange`. */
export const COLOURS = words('black blue brown gold green grey orange pink purple red silver white yellow')
/** After these, `to` stands before a noun: `next to lead`. */
export const BEFORE_NOUN_TO = words('next close due thanks according similar near addicted led lead leads put')
/** Can stand between a helper and its verb without changing what follows. */
export const ADVERBS = words(
  'not never always often also just now still only ever really soon then quickly slowly gently both all again ' +
    'usually sometimes already almost please',
)
export const LINKING = words(
  'look looks looked seem seems seemed sound sounds sounded stay stays stayed stand stands stood sit sits sat ' +
    'come comes came draw drew drawn coming keep keeps kept lie lies lay lying feel feels felt',
)
export const DEGREES = words('very too quite how rather')
/** Begin a clause, so that a bare word after them can be an order or a further verb. */
export const CLAUSE_STARTS = words('and or but then so please')
/** Begin a clause with a subject of its own. */
export const CLAUSE_JOINS = words('and but because when so if where since as while until before after though')
/** Begin a clause that says something of what stands before it, or asks. */
export const CLAUSE_OPENERS = words('that which where when what how if because since while')
/** Begin what is said of the person or thing before. */
export const RELATIVES = words('that which who')
/** Begin a question as an object: `Record how it fell`. */
export const QUESTIONS = words('how what if whether where whither why')
/** Adjectives of children's text that are hardly ever anything else. */
export const ADJECTIVES = words(
  'bad best better big biggest bitter black blue bold brave bright broken brown busy calm cheap clean clever ' +
    'close cold cool curious daily damp dark dead dear deep different dirty dry dull early easy empty extra faint fair ' +
    'false famous far fast fat favorite favourite fierce fine first fit flat free fresh full funny further gentle glad ' +
    'good grand great green grey hairy happy hard heavy high hot huge hungry icy important impossible kind large ' +
    'last late lazy little lively long loud lovely low lucky mad main merry messy mighty muddy nasty naughty neat ' +
    'new next nice noisy odd old oldest only orange own perfect pink plain polite poor possible pretty proud ' +
    'public purple quick quiet rare raw real red rich ripe rough round rude sad safe same scary school second ' +
    'secret serious sharp short shy sick silent silly single sleepy slow small smart smelly smooth soft sore ' +
    'spare special stale steep sticky stiff strange strict strong stupid sudden sure sweet tall tame terrible ' +
    'thick thin third tidy tiny tired true ugly useful usual warm weak weekly wet white whole wide wild wise ' +
    'wonderful worst wrong yellow young',
)
/** Of those, the ones that also stand alone before a verb: `First read the rules`. */
export const LOOSE_ADJECTIVES = words(
  'last first second third next best better hard long low high round wrong own only',
)
/** End in an s, and are no more than one. */
const NO_PLURALS = words(
  'across afterwards always backwards besides downstairs does forwards gets goes has hers its lots ours perhaps says sometimes sports theirs towards upstairs ' +
    'was whereas yes yours',
)

const ONE_IN_MEN = words('abdomen acumen regimen specimen')

/** `firemen`, `grandchildren`. */
export const isManyPeople = (word: string): boolean => /[a-z](?:men|children)$/.test(word) && !ONE_IN_MEN.has(word)

/** Ends as a plural does: `dogs`, `firemen`, and not `glass`, `its`, `always`. */
export const looksPlural = (word: string | undefined): boolean =>
  word !== undefined && ((/[a-z][^isu']s$/.test(word) && !NO_PLURALS.has(word)) || isManyPeople(word))

/** `children`, `owls`: many, by the word alone. */
export const isMany = (word: string | undefined): boolean => has(PLURALS, word) || looksPlural(word)
