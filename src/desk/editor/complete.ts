// Ctrl Space: words that fit, from the same bank as the panel. Never unasked, so that Enter at the end of a line takes no word.

import {
  autocompletion,
  type CompletionContext,
  type CompletionResult,
  completionKeymap,
} from '@codemirror/autocomplete'
import { type Extension, Prec } from '@codemirror/state'
import { keymap } from '@codemirror/view'
import type { Completions } from '../core/questions.ts'

export type AskCompletions = (at: number) => Promise<Completions | undefined>

const KINDS = { decodable: '', sight: 'known by heart', name: 'name' } as const

export function completion(ask: AskCompletions): Extension {
  const source = async (context: CompletionContext): Promise<CompletionResult | null> => {
    const found = context.explicit ? await ask(context.pos) : undefined
    if (found === undefined || context.aborted) return null
    return {
      from: found.from,
      filter: false,
      options: found.words.map(({ word, kind }) => ({ label: word, ...(KINDS[kind] && { detail: KINDS[kind] }) })),
    }
  }
  return [
    autocompletion({
      override: [source],
      activateOnTyping: false,
      icons: false,
      defaultKeymap: false,
      maxRenderedOptions: 30,
    }),
    // Before all other keys: Enter takes the word that is chosen.
    Prec.highest(keymap.of(completionKeymap)),
  ]
}
