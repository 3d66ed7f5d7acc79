// Why a story could not be checked: where that is, and whether it was told before.

import type { UncheckedStory } from '../check/result.ts'
import { toPrintable } from './text.ts'

/** Of the story itself, mostly with a place: `a.md:3:1: error: …`, after the path. */
const IN_STORY = /^(?::(\d+:\d+))?: (?:(error|warning): )?(.*)$/s

/** A place in the sequence that the story names, and who named it: `mine.yaml:3:1: … (set in a.md:2)`. */
const IN_SEQUENCE = /^([^`\n]+?\.(?:ya?ml|json)):(\d+:\d+): (.*?)(?: \((?:set in [^()]*|the default)\))?$/s

/** As lines of the report for editors; at the very beginning of the story where there is no place. */
export const toFailureLines = ({ path, failures }: UncheckedStory): string[] =>
  failures.map((failure) => {
    const found = failure.startsWith(path) ? IN_STORY.exec(failure.slice(path.length)) : null
    if (!found) return toLine(path, '1:1', 'error', failure)
    const [, place = '1:1', severity = 'error', message = ''] = found
    return toLine(path, place, severity, message)
  })

/** The same, with a mistake in the sequence told where it stands: for reports that are read as a whole. */
export const toPlacedLines = ({ path, failures }: UncheckedStory): string[] =>
  failures.flatMap((failure) => {
    const found = failure.startsWith(`${path}:`) ? null : IN_SEQUENCE.exec(failure)
    if (!found) return toFailureLines({ path, failures: [failure] })
    const [, file = '', place = '', message = ''] = found
    return toLine(file, place, 'error', message)
  })

const toLine = (path: string, place: string, severity: string, message: string): string =>
  `${toPrintable(path)}:${place}-${place}: ${severity}: ${toPrintable(message)} [not-checked]\n`

/** Whether it is a mistake in the sequence rather than in the story. */
export const isInSequence = (failure: string): boolean => IN_SEQUENCE.test(failure)

/** Whether a failure was not met before. A mistake in a sequence is the same, whichever story names the sequence. */
export function createOnce(): (failure: string) => boolean {
  const told = new Set<string>()
  return (failure) => {
    const mistake = IN_SEQUENCE.exec(failure)?.slice(1).join(':') ?? failure
    const isNew = !told.has(mistake)
    told.add(mistake)
    return isNew
  }
}
