// Words of England's national curriculum, copied for tests.
// Source: Department for Education (2013), The national curriculum in England, English Appendix 1: Spelling, statutory and
// example words for years 1 and 2. Crown copyright; licensed under the Open Government Licence.

const toWords = (...lines: readonly string[]) => lines.join(' ').split(' ')

/** The common exception words of each year. */
export const EXCEPTIONS = {
  1: toWords(
    'the a do to today of said says are were was is his has I you your they be he me she we no go so by',
    'my here there where love come some one once ask friend school put push pull full house our',
  ),
  2: toWords(
    'door floor poor because find kind mind behind child children wild climb most only both old cold gold',
    'hold told every everybody even great break steak pretty beautiful after fast last past father class',
    'grass pass plant path bath hour move prove improve sure sugar eye could should would who whole any',
    'many clothes busy people water again half money Mr Mrs parents Christmas',
  ),
} as const

const BY_YEAR = {
  1: toWords(
    'off well miss buzz back bank think honk sunk pocket rabbit carrot thunder sunset catch fetch kitchen',
    'notch hutch have live give cats dogs spends rocks thanks catches hunting hunted hunter buzzing',
    'buzzed buzzer jumping jumped jumper grander grandest fresher freshest quicker quickest rain wait',
    'train paid afraid oil join coin point soil day play say way stay boy toy enjoy annoy made came same',
    'take safe these theme complete five ride like time side home those woke hope hole June rule rude use',
    'tube tune car start park arm garden see tree green meet week sea dream meat each read head bread',
    'meant instead her term verb person better under summer winter sister girl bird shirt first third',
    'turn hurt church burst Thursday food pool moon zoo soon book took foot wood good boat coat road',
    'coach goal toe goes out about mouth around sound now how brown down town own blow snow grow show',
    'blue clue true rescue Tuesday new few grew flew drew threw lie tie pie cried tried dried chief field',
    'thief high night light bright right for short born horse morning more score before wore shore saw',
    'draw yawn crawl author August dinosaur astronaut air fair pair hair chair dear hear beard near year',
    'bear pear wear bare dare care share scared very happy funny party family dolphin alphabet phonics',
    'elephant when where which wheel while Kent sketch kit skin frisky unhappy undo unload unfair unlock',
    'football playground farmyard bedroom blackberry',
  ),
  2: toWords(
    'badge edge bridge dodge fudge age huge change charge bulge village gem giant magic giraffe energy',
    'jacket jar jog join adjust race ice cell city fancy knock know knee gnat gnaw write written wrote',
    'wrong wrap table apple bottle little middle camel tunnel squirrel travel towel tinsel metal pedal',
    'capital hospital animal pencil fossil nostril cry fly dry try reply July flies tries replies copies',
    'babies carries copied copier happier happiest cried replied copying crying replying hiking hiked',
    'hiker nicer nicest shiny patting patted humming hummed dropping dropped sadder saddest fatter',
    'fattest runner runny all ball call walk talk always other mother brother nothing Monday key donkey',
    'monkey chimney valley want watch wander quantity squash word work worm world worth war warm towards',
    'television treasure usual enjoyment sadness careful playful hopeless plainness badly merriment',
    "happiness plentiful penniless happily can't didn't hasn't couldn't it's I'll Megan's Ravi's girl's",
    "child's man's station fiction motion national section",
  ),
} as const

/** The example words of all rows but the homophones, each with its year. */
export const EXAMPLES: readonly (readonly [word: string, year: 1 | 2])[] = ([1, 2] as const).flatMap((year) =>
  BY_YEAR[year].map((word) => [word, year] as const),
)

/** The row of homophones, year 2: those of its words that stand in no other row. */
export const HOMOPHONES = toWords("their they're quite quiet won sun son too two bee blew knight")
