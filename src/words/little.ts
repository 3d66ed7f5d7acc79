// The little words: the closed classes that hold a sentence together, and which of them can stand in for one another.

export type LittleClass =
  | 'article' | 'auxiliary' | 'conjunction' | 'interjection' | 'number' | 'particle' | 'preposition' | 'pronoun' | 'question'

/**
 * Word, class, and the little words that can often stand there instead, nearest first. Sorted by word.
 * The classes follow Quirk et al., A Comprehensive Grammar of the English Language (1985), from memory; `near` is the project's own judgement.
 */
export const LITTLE_WORDS = [
  ['a', 'article', 'the'], ['about', 'preposition', 'of on'], ['above', 'preposition', 'over on up'],
  ['across', 'preposition', 'over past'], ['after', 'preposition', ''], ['against', 'preposition', 'by on at'],
  ['all', 'pronoun', 'both'], ['along', 'preposition', 'on by past'], ['although', 'conjunction', 'but if'],
  ['am', 'auxiliary', ''], ['among', 'preposition', 'in with'], ['an', 'article', 'the'], ['and', 'conjunction', 'but then'],
  ['another', 'pronoun', 'the one'], ['any', 'pronoun', 'all'], ['are', 'auxiliary', ''],
  ['around', 'preposition', 'on by at'], ['as', 'conjunction', ''], ['at', 'preposition', 'in on by'],
  ['because', 'conjunction', 'as for'], ['been', 'auxiliary', ''], ['before', 'preposition', ''],
  ['behind', 'preposition', 'in by at'], ['below', 'preposition', 'under'], ['beneath', 'preposition', 'under in'],
  ['beside', 'preposition', 'by at on'], ['between', 'preposition', 'in by'], ['both', 'pronoun', 'all'],
  ['but', 'conjunction', 'and'], ['by', 'preposition', 'at in on'], ['can', 'auxiliary', 'will'],
  ['could', 'auxiliary', 'can'], ['did', 'auxiliary', ''], ['do', 'auxiliary', ''], ['does', 'auxiliary', ''],
  ['down', 'preposition', 'in off'], ['during', 'preposition', 'in at'], ['each', 'pronoun', 'all the'],
  ['eight', 'number', 'ten six five'], ['either', 'pronoun', ''], ['eleven', 'number', 'ten six'],
  ['every', 'pronoun', 'all the'], ['everybody', 'pronoun', 'all'], ['everyone', 'pronoun', 'all'],
  ['everything', 'pronoun', 'all it'], ['except', 'preposition', 'but'], ['five', 'number', 'six ten'],
  ['for', 'preposition', ''], ['four', 'number', 'six ten five'], ['from', 'preposition', 'off of'],
  ['had', 'auxiliary', ''], ['has', 'auxiliary', ''], ['have', 'auxiliary', ''], ['he', 'pronoun', 'it'],
  ['hello', 'interjection', 'hi'], ['her', 'pronoun', 'him his it'], ['hers', 'pronoun', 'his'],
  ['herself', 'pronoun', 'her'], ['him', 'pronoun', 'it'], ['himself', 'pronoun', 'him'], ['his', 'pronoun', 'its'],
  ['how', 'question', ''], ['i', 'pronoun', ''], ['if', 'conjunction', 'when'], ['in', 'preposition', 'at on'],
  ['inside', 'preposition', 'in'], ['into', 'preposition', 'in to on'], ['is', 'auxiliary', ''], ['it', 'pronoun', ''],
  ['its', 'pronoun', 'his'], ['itself', 'pronoun', 'it'], ['may', 'auxiliary', 'can'], ['me', 'pronoun', 'us'],
  ['might', 'auxiliary', 'can'], ['mine', 'pronoun', ''], ['must', 'auxiliary', 'can'], ['my', 'pronoun', 'his'],
  ['myself', 'pronoun', 'me'], ['near', 'preposition', 'by at'], ['neither', 'pronoun', ''], ['nine', 'number', 'ten six'],
  ['no', 'interjection', 'not'], ['nobody', 'pronoun', ''], ['none', 'pronoun', ''], ['nor', 'conjunction', 'and'],
  ['not', 'particle', ''], ['nothing', 'pronoun', ''], ['of', 'preposition', ''], ['off', 'preposition', 'on'],
  ['oh', 'interjection', 'ah'], ['on', 'preposition', 'in at'], ['one', 'number', 'six ten'], ['onto', 'preposition', 'on in'],
  ['or', 'conjunction', 'and'], ['our', 'pronoun', 'his'], ['ours', 'pronoun', 'his'], ['out', 'preposition', 'off'],
  ['outside', 'preposition', 'by at'], ['over', 'preposition', 'on'], ['past', 'preposition', 'by'], ['round', 'preposition', 'on by at'],
  ['seven', 'number', 'ten six'], ['shall', 'auxiliary', 'will can'], ['she', 'pronoun', 'he it'],
  ['should', 'auxiliary', 'must can'], ['since', 'conjunction', 'as'], ['six', 'number', 'ten'],
  ['some', 'pronoun', 'the a'], ['somebody', 'pronoun', ''], ['someone', 'pronoun', ''], ['something', 'pronoun', 'it'],
  ['ten', 'number', 'six'], ['than', 'conjunction', ''], ['that', 'pronoun', 'the it'], ['the', 'article', 'a'],
  ['their', 'pronoun', 'his'], ['theirs', 'pronoun', 'his'], ['them', 'pronoun', 'us him it'],
  ['themselves', 'pronoun', 'them'], ['these', 'pronoun', 'the'], ['they', 'pronoun', 'we he it'],
  ['this', 'pronoun', 'the it'], ['those', 'pronoun', 'the'], ['though', 'conjunction', 'but'],
  ['three', 'number', 'ten six'], ['through', 'preposition', 'in into past'], ['till', 'conjunction', ''],
  ['to', 'preposition', 'at in'], ['toward', 'preposition', 'to at'], ['towards', 'preposition', 'to at'],
  ['twelve', 'number', 'ten six'], ['two', 'number', 'ten six'], ['under', 'preposition', 'in by'],
  ['until', 'conjunction', 'till'], ['up', 'preposition', 'on'], ['upon', 'preposition', 'on'], ['us', 'pronoun', 'them him'],
  ['was', 'auxiliary', 'is'], ['we', 'pronoun', 'they he'], ['were', 'auxiliary', 'are'], ['what', 'question', ''],
  ['when', 'question', 'if as'], ['where', 'question', ''], ['which', 'question', 'that'], ['while', 'conjunction', 'as when'],
  ['who', 'question', 'that'], ['whom', 'question', 'that'], ['whose', 'question', ''], ['why', 'question', ''],
  ['will', 'auxiliary', 'can'], ['with', 'preposition', 'by'], ['within', 'preposition', 'in'],
  ['without', 'preposition', ''], ['would', 'auxiliary', 'will can'], ['yes', 'interjection', ''], ['you', 'pronoun', ''],
  ['your', 'pronoun', 'his'], ['yours', 'pronoun', 'his'], ['yourself', 'pronoun', 'you'],
] as const satisfies readonly (readonly [string, LittleClass, string])[]

const BY_WORD = new Map<string, readonly string[]>(LITTLE_WORDS.map(([word, , near]) => [word, near === '' ? [] : near.split(' ')]))

export function isLittleWord(word: string): boolean {
  return BY_WORD.has(word.toLowerCase())
}

/** Little words that can often stand where this one stands, nearest first; empty for any other word. */
export function toNearLittleWords(word: string): readonly string[] {
  return BY_WORD.get(word.toLowerCase()) ?? []
}
