// What a check of real stories costs, beside a general Markdown linter and, where it is installed, a general prose linter.
//
// The stories are those of a folder that was not written for a step, repeated to 200 files: an old shelf before its first check.

import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { PROGRAM, ROOT } from '../root.ts'
import type { Story } from './check.ts'
import type { Row } from './measure.ts'
import { type Contestant, contest } from './processes.ts'

const MANY = 200
const STEPS = ['pink-4', 'green-5', 'green-14'] as const
/** The step at which limits are set: one word in three of such a story cannot be read there. */
const LIMITED = 'green-5'

const check = (what: string, args: readonly string[], limit?: number): Contestant => ({
  what,
  args: [PROGRAM, 'check', ...args, '--fail-on', 'never', '--workers', '0'],
  ...(limit !== undefined && { limit }),
})

/** The most that offers may be of a check of real stories, by the processor's time. */
const MOST_OF_OFFERS = 0.15

export function benchCorpus(stories: readonly Story[]): Row[] {
  const longest = stories.reduce((long, story) => (story.text.length > long.text.length ? story : long))
  const folder = mkdtempSync(join(tmpdir(), 'battledore-bench-'))
  try {
    mkdirSync(join(folder, 'many'))
    for (let at = 0; at < MANY; at++)
      writeFileSync(join(folder, 'many', `${at}.md`), stories[at % stories.length]?.text ?? '')
    writeFileSync(join(folder, 'one.md'), longest.text)
    const size = `${(longest.text.length / 1000).toFixed(1)} KB`
    const ones = [
      check(`one real story of ${size} at ${LIMITED}, with offers`, ['one.md', '--step', LIMITED], 2.6),
      check(`the same without offers`, ['one.md', '--step', LIMITED, '--no-suggest']),
      {
        what: `fix --dry-run of that story at ${LIMITED}`,
        args: [PROGRAM, 'fix', 'one.md', '--step', LIMITED, '--dry-run'],
        limit: 3,
      },
    ]
    return [
      ...contest([...ones, ...toOthers('one.md', 'the same')], 15, folder),
      ...contest([...STEPS.flatMap(toMany), ...toOthers('many', `${MANY} real stories`)], 5, folder),
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

function toMany(step: (typeof STEPS)[number]): readonly Contestant[] {
  const what = `${MANY} real stories at ${step}`
  const args = ['many', '--step', step]
  const limits = step === LIMITED ? { offers: 20, plain: 16 } : { offers: undefined, plain: undefined }
  const plain = `${what}, pretty, without offers`
  const beyond = { what: `what offers are of a check of ${what}`, other: plain, limit: MOST_OF_OFFERS }
  return [
    { ...check(`${what}, pretty, with offers`, args, limits.offers), ...(step === LIMITED && { beyond }) },
    check(plain, [...args, '--no-suggest'], limits.plain),
    check(`${what}, line`, [...args, '--format', 'line']),
    check(`${what}, json, with offers`, [...args, '--format', 'json']),
    check(`${what}, json, without offers`, [...args, '--format', 'json', '--no-suggest']),
  ]
}

/** General linters, on what they take for good style: a yardstick for the machine, not for what they say. */
function toOthers(path: string, what: string): readonly Contestant[] {
  const remark = fileURLToPath(new URL('../../node_modules/remark-cli/cli.js', import.meta.url))
  const preset = fileURLToPath(import.meta.resolve('remark-preset-lint-recommended'))
  const textlint = join(ROOT, 'node_modules', 'textlint', 'bin', 'textlint.js')
  const rule = join(ROOT, 'node_modules', 'textlint-rule-common-misspellings')
  return [
    ...(existsSync(remark)
      ? [
          {
            what: `${what} by remark-cli with its recommended rules`,
            args: [remark, path, '--use', preset, '--no-stdout'],
          },
        ]
      : []),
    ...(existsSync(textlint) && existsSync(rule)
      ? [{ what: `${what} by textlint with one rule`, args: [textlint, '--rule', 'common-misspellings', path] }]
      : []),
  ]
}
