// Prints the words that children know and that are fit to be proposed, one a line: what make.py asks for.

import { openEngine, openWords } from '../accuracy/engine.ts'

const { lexicon } = openEngine()
const { data } = openWords(lexicon)
for (const [index, word] of lexicon.words().entries()) {
  const { known, main, fit } = data.facts.factsAt(index)
  if (known > 0 && main !== undefined && fit) process.stdout.write(`${word}\n`)
}
