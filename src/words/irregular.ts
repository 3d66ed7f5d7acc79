// The forms that no rule makes: irregular plurals, past forms and degrees. Common dictionary knowledge, no source.

/** Base, plural. Sorted by base. */
export const IRREGULAR_PLURALS = [
  ['calf', 'calves'], ['child', 'children'], ['deer', 'deer'], ['die', 'dice'], ['elf', 'elves'], ['fish', 'fish'],
  ['foot', 'feet'], ['goose', 'geese'], ['half', 'halves'], ['knife', 'knives'], ['leaf', 'leaves'], ['life', 'lives'],
  ['loaf', 'loaves'], ['louse', 'lice'], ['man', 'men'], ['mouse', 'mice'], ['ox', 'oxen'], ['person', 'people'],
  ['scarf', 'scarves'], ['self', 'selves'], ['sheep', 'sheep'], ['shelf', 'shelves'], ['thief', 'thieves'],
  ['tooth', 'teeth'], ['wife', 'wives'], ['wolf', 'wolves'], ['woman', 'women'],
] as const satisfies readonly (readonly [string, string])[]

/** Base, past, past participle. Sorted by base. */
export const IRREGULAR_VERBS = [
  ['arise', 'arose', 'arisen'], ['awake', 'awoke', 'awoken'], ['be', 'was', 'been'], ['bear', 'bore', 'borne'],
  ['beat', 'beat', 'beaten'], ['become', 'became', 'become'], ['begin', 'began', 'begun'], ['bend', 'bent', 'bent'],
  ['bet', 'bet', 'bet'], ['bind', 'bound', 'bound'], ['bite', 'bit', 'bitten'], ['bleed', 'bled', 'bled'],
  ['blow', 'blew', 'blown'], ['break', 'broke', 'broken'], ['breed', 'bred', 'bred'], ['bring', 'brought', 'brought'],
  ['build', 'built', 'built'], ['burst', 'burst', 'burst'], ['buy', 'bought', 'bought'], ['cast', 'cast', 'cast'],
  ['catch', 'caught', 'caught'], ['choose', 'chose', 'chosen'], ['cling', 'clung', 'clung'], ['come', 'came', 'come'],
  ['cost', 'cost', 'cost'], ['creep', 'crept', 'crept'], ['cut', 'cut', 'cut'], ['deal', 'dealt', 'dealt'],
  ['dig', 'dug', 'dug'], ['do', 'did', 'done'], ['draw', 'drew', 'drawn'], ['drink', 'drank', 'drunk'],
  ['drive', 'drove', 'driven'], ['eat', 'ate', 'eaten'], ['fall', 'fell', 'fallen'], ['feed', 'fed', 'fed'],
  ['feel', 'felt', 'felt'], ['fight', 'fought', 'fought'], ['find', 'found', 'found'], ['flee', 'fled', 'fled'],
  ['fling', 'flung', 'flung'], ['fly', 'flew', 'flown'], ['forget', 'forgot', 'forgotten'],
  ['forgive', 'forgave', 'forgiven'], ['freeze', 'froze', 'frozen'], ['get', 'got', 'got'], ['give', 'gave', 'given'],
  ['go', 'went', 'gone'], ['grind', 'ground', 'ground'], ['grow', 'grew', 'grown'], ['hang', 'hung', 'hung'],
  ['have', 'had', 'had'], ['hear', 'heard', 'heard'], ['hide', 'hid', 'hidden'], ['hit', 'hit', 'hit'],
  ['hold', 'held', 'held'], ['hurt', 'hurt', 'hurt'], ['keep', 'kept', 'kept'], ['kneel', 'knelt', 'knelt'],
  ['know', 'knew', 'known'], ['lay', 'laid', 'laid'], ['lead', 'led', 'led'], ['leave', 'left', 'left'],
  ['lend', 'lent', 'lent'], ['let', 'let', 'let'], ['lie', 'lay', 'lain'], ['light', 'lit', 'lit'],
  ['lose', 'lost', 'lost'], ['make', 'made', 'made'], ['mean', 'meant', 'meant'], ['meet', 'met', 'met'],
  ['pay', 'paid', 'paid'], ['put', 'put', 'put'], ['quit', 'quit', 'quit'], ['read', 'read', 'read'],
  ['ride', 'rode', 'ridden'], ['ring', 'rang', 'rung'], ['rise', 'rose', 'risen'], ['run', 'ran', 'run'],
  ['say', 'said', 'said'], ['see', 'saw', 'seen'], ['seek', 'sought', 'sought'], ['sell', 'sold', 'sold'],
  ['send', 'sent', 'sent'], ['set', 'set', 'set'], ['shake', 'shook', 'shaken'], ['shed', 'shed', 'shed'],
  ['shine', 'shone', 'shone'], ['shoot', 'shot', 'shot'], ['shrink', 'shrank', 'shrunk'], ['shut', 'shut', 'shut'],
  ['sing', 'sang', 'sung'], ['sink', 'sank', 'sunk'], ['sit', 'sat', 'sat'], ['sleep', 'slept', 'slept'],
  ['slide', 'slid', 'slid'], ['sling', 'slung', 'slung'], ['slit', 'slit', 'slit'], ['speak', 'spoke', 'spoken'],
  ['speed', 'sped', 'sped'], ['spend', 'spent', 'spent'], ['spin', 'spun', 'spun'], ['spit', 'spat', 'spat'],
  ['split', 'split', 'split'], ['spread', 'spread', 'spread'], ['spring', 'sprang', 'sprung'],
  ['stand', 'stood', 'stood'], ['steal', 'stole', 'stolen'], ['stick', 'stuck', 'stuck'], ['sting', 'stung', 'stung'],
  ['stink', 'stank', 'stunk'], ['strike', 'struck', 'struck'], ['string', 'strung', 'strung'], ['swear', 'swore', 'sworn'],
  ['sweep', 'swept', 'swept'], ['swim', 'swam', 'swum'], ['swing', 'swung', 'swung'], ['take', 'took', 'taken'],
  ['teach', 'taught', 'taught'], ['tear', 'tore', 'torn'], ['tell', 'told', 'told'], ['think', 'thought', 'thought'],
  ['throw', 'threw', 'thrown'], ['wake', 'woke', 'woken'], ['wear', 'wore', 'worn'], ['weave', 'wove', 'woven'],
  ['weep', 'wept', 'wept'], ['wet', 'wet', 'wet'], ['win', 'won', 'won'], ['wind', 'wound', 'wound'],
  ['wring', 'wrung', 'wrung'], ['write', 'wrote', 'written'],
] as const satisfies readonly (readonly [string, string, string])[]

/** Base, third person. */
export const IRREGULAR_THIRD = [
  ['be', 'is'], ['do', 'does'], ['go', 'goes'], ['have', 'has'],
] as const satisfies readonly (readonly [string, string])[]

/** Base, comparative, superlative. Sorted by base. */
export const IRREGULAR_DEGREES = [
  ['bad', 'worse', 'worst'], ['far', 'farther', 'farthest'], ['good', 'better', 'best'], ['little', 'less', 'least'],
  ['many', 'more', 'most'],
] as const satisfies readonly (readonly [string, string, string])[]
