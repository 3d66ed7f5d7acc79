// Tells whether a line at the end of a book says who made it: `Written by Ann Bell. Pictures by Tom Hill.`

import { hasLetterOrDigit } from '../letter-kinds.ts'
import { stripAddresses } from './addresses.ts'

/** `perhaps` may be story too, and is a credit only beside another line that surely is one. */
export type CreditSign = 'sure' | 'perhaps' | 'none'

/** What lines say together: one that is no credit spoils all. */
export function joinSigns(signs: readonly CreditSign[]): CreditSign {
  if (signs.includes('none')) return 'none'
  return signs.includes('sure') ? 'sure' : 'perhaps'
}

/** Credits are shorter than this. */
const longest = 2000

/** Most blocks of a story hold none of these, and need no closer look. */
const hint = /©|\(c\)|copyright|reserved|isbn|under|commons|\bcc0?\b|\bby\b|:|@|www\./i

/** What the lines of a block say. */
export function toCreditSign(text: string): CreditSign {
  if (text.length > longest || !hint.test(text)) return 'none'
  const lines = text.split('\n').filter((line) => line.trim() !== '')
  return joinSigns(lines.map((line) => toLineSign(line.trim())))
}

// Tom T. Hen. All rights reserved.
//           ^^ but not after an initial
const toSentenceEnd = (): RegExp => /(?<=[.!?])(?<!(?<!\p{L})\p{Lu}\.)\s+(?=\p{Lu}|©)/u

function toLineSign(line: string): CreditSign {
  const text = stripAddresses(line).trim()
  if (!hasLetterOrDigit(text)) return text === line ? 'perhaps' : 'sure'
  const whole = toPartSign(text)
  return whole === 'none' ? joinSigns(text.split(toSentenceEnd()).map(toPartSign)) : whole
}

const notice =
  /^(?:\w+ ){0,4}(?:©|\(c\)\s*(?:\d|.*\d{4})|copyright\b.*\d{4})|^(?:all rights reserved|isbn\b)|^(?:cc0|cc[ -]by|creative commons)\b/i
const licence =
  /^licen[cs]ed under\b|^[^.!?]*\b(?:licen[cs]ed|released|published|available|shared) under\b.*(?:\bcc\b|\bcommons\b|\blicen[cs]e\b|public domain)/i

function toPartSign(part: string): CreditSign {
  if (notice.test(part) || licence.test(part) || isMakerLine(part)) return 'sure'
  return toNameSign(part)
}

const maker =
  /^(?:(?:written|illustrated|drawn|photographed|designed|created|translated|adapted|edited|retold|published)(?: and \w+)?|(?:cover )?(?:story|words|text|pictures|illustrations|photos|photographs|drawings|art|artwork|design|layout)(?: and \w+)?) by:? /i
// A name, and whatever follows it up to the first stop that is not an initial's.
const startsWithName = (text: string): boolean => /^\p{Lu}(?:[^.!?]|(?<=(?<!\p{L})\p{Lu})\.)*\.?$/u.test(text)

/** `Drawn by Old Ned and his hens`; but not `Drawn by the hens`. */
function isMakerLine(part: string): boolean {
  const lead = maker.exec(part)?.[0]
  return lead !== undefined && startsWithName(part.slice(lead.length))
}

const noName = String.raw`(?!(?:The|A|An|My|His|Her|Our|Your|Their|This|That|Its?)(?![\p{L}.]))`
const nameWord = String.raw`${noName}(?:(?:\p{Lu}|Dr|Mrs?|Ms|St)\.|\p{Lu}[\p{L}'’-]*)`
const fullName = `${nameWord}(?: (?:(?:al|bin|da|de|den|der|di|du|la|le|van|von) ){0,2}${nameWord})*`
const names = String.raw`^${fullName}(?:(?:, | and | & )${fullName})*(?:,? \(?\d{4}\)?)?\.?$`
// Made where a line may be a credit, since it takes longer to make than a story to ask.
const areNames = (text: string): boolean => new RegExp(names, 'u').test(text)

/** `Author: Ann`, `Text: Ann Bell`: what names a thing wants a longer name. */
const personKey =
  /^(?:author|artist|contributor|designer|editor|illustrator|photographer|publisher|translator|writer)s?: */i
const thingKey = /^(?:by|illustrations?|photographs|photos|text): */i

function toNameSign(part: string): CreditSign {
  const person = personKey.exec(part)?.[0]
  if (person !== undefined) return areNames(part.slice(person.length)) ? 'sure' : 'none'
  const lead = thingKey.exec(part)?.[0] ?? /^by /i.exec(part)?.[0]
  const value = part.slice(lead?.length)
  if (lead === undefined || !value.includes(' ') || !areNames(value)) return 'none'
  // `By Ann Bell` stands under a book, `By Big Ben.` may answer a question in it.
  return value.endsWith('.') ? 'perhaps' : 'sure'
}
