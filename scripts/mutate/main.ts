// `npm run mutate -- FOLDER…`: changes the code in small ways and asks whether a test notices. Minutes to an hour; not in CI.
//
//   npm run mutate -- verdict                        250 mutants of each folder that is named, drawn with seed 1
//   npm run mutate -- story --sample 40 --seed 7     fewer, and others
//   npm run mutate -- phonics --concurrency 2        two at a time
//   npm run mutate -- lint --files 'run*.ts'         only files of the folder whose path fits
//
// It prints the score (the share of mutants that a test noticed) and each survivor with its place and what stood there instead. A mutant whose tests
// took too long may only have waited for a busy machine: it is tried once more with more time. Leave the sources alone while it runs.

import { readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { parseArgs } from 'node:util'
import { Stryker } from '@stryker-mutator/core'
import { ROOT } from '../root.ts'
import { sampleMutants, toKey } from './sample.ts'
import { FOLDERS, type Folder, findTests, isFolder } from './tests.ts'

type Result = Awaited<ReturnType<Stryker['runMutationTest']>>[number]

/** Milliseconds beyond half as long again as the tests took without a mutant. */
const PATIENCE = { first: 20_000, again: 120_000 } as const

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    sample: { type: 'string', default: '250' },
    seed: { type: 'string', default: '1' },
    concurrency: { type: 'string', default: '1' },
    files: { type: 'string', default: '**/*.ts' },
  },
})

function toCount(name: 'sample' | 'seed' | 'concurrency'): number {
  const value = Number(values[name])
  if (Number.isSafeInteger(value) && value > 0) return value
  return fail(`--${name} takes a whole number from 1; this is "${values[name]}".`)
}

function fail(message: string): never {
  console.error(message)
  process.exit(2)
}

const unknown = positionals.find((name) => !isFolder(name))
if (positionals.length === 0 || unknown !== undefined)
  fail(`Name one or more of ${Object.keys(FOLDERS).join(', ')}${unknown === undefined ? '' : `; not "${unknown}"`}.`)

process.chdir(ROOT)
const [size, seed, concurrency] = [toCount('sample'), toCount('seed'), toCount('concurrency')]
const sample = sampleMutants(size, seed)
for (const folder of positionals.filter(isFolder))
  report(
    folder,
    // Stryker has told by then which test failed.
    await mutateFairly(folder).catch((error: Error) => fail(`src/${folder} could not be tried: ${error.message}`)),
  )

/** Code that is run far too often is stopped by its count, on any machine; other tests that take too long may have waited for their turn. */
function isOutOfTime({ status, statusReason }: Result): boolean {
  return status === 'Timeout' && !statusReason?.startsWith('Hit limit')
}

async function mutateFairly(folder: Folder): Promise<readonly Result[]> {
  sample.only = undefined
  const results = await mutate(folder, PATIENCE.first)
  const late = results.filter(isOutOfTime)
  if (late.length === 0) return results
  console.log(`${late.length} ran out of time, and are tried again with more`)
  sample.only = new Set(late.map(toKey))
  const again = new Map((await mutate(folder, PATIENCE.again)).map((one) => [toKey(one), one]))
  return results.map((one) => (isOutOfTime(one) ? (again.get(toKey(one)) ?? one) : one))
}

async function mutate(folder: Folder, timeoutMS: number): Promise<readonly Result[]> {
  const tests = findTests(folder)
  process.env['MUTATE_TESTS'] = JSON.stringify(tests)
  const mutate = `src/${folder}/${values.files}`
  console.log(
    `src/${folder}: ${sample.only?.size ?? size} mutants at most, seed ${seed}, asked of ${tests.length} files of tests`,
  )
  return new Stryker({
    mutate: [mutate],
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner'],
    vitest: { configFile: 'vitest.mutate.config.ts', related: true },
    coverageAnalysis: 'perTest',
    concurrency,
    // Tests that read a source compare its text; vitest checks no types.
    disableTypeChecks: false,
    // Everything else is copied for the run. A second biome.json would stop Biome while it lasts.
    ignorePatterns: ['biome.json', 'coverage', '*.tmp.ts'],
    reporters: ['progress-append-only'],
    logLevel: 'warn',
    warnings: false,
    tempDirName: '.stryker-tmp',
    // The machine may be busy, and the dry run with it.
    dryRunTimeoutMinutes: 30,
    timeoutMS,
    allowEmpty: false,
  } as ConstructorParameters<typeof Stryker>[0]).runMutationTest()
}

function report(folder: Folder, results: readonly Result[]): void {
  const having = (...statuses: readonly string[]): readonly Result[] =>
    results.filter(({ status }) => statuses.includes(status))
  const noticed = having('Killed', 'Timeout')
  const unnoticed = having('Survived', 'NoCoverage')
  for (const mutant of unnoticed) console.log(toLine(mutant))
  const tried = noticed.length + unnoticed.length
  const share = tried === 0 ? 'none' : `${((100 * noticed.length) / tried).toFixed(1)} %`
  const failed = having('CompileError', 'RuntimeError').length
  const late = noticed.filter(isOutOfTime)
  for (const mutant of late) console.log(`${toLine(mutant)} (out of time twice)`)
  console.log(
    `src/${folder}: ${share} (${noticed.length} of ${tried} noticed: ${having('Killed').length} by a test that fails, ` +
      `${having('Timeout').length - late.length} by code that does not end, ${late.length} out of time twice; ` +
      `${having('NoCoverage').length} reached by no test; ${failed} would not run; ${sample.all} mutants in all)`,
  )
}

/** `src/x.ts:3:5 EqualityOperator: a < b → a <= b`, for an editor to jump to. */
function toLine({ fileName, location, mutatorName, replacement, status }: Result): string {
  const { start, end } = location
  const lines = readFileSync(join(ROOT, relative(ROOT, fileName)), 'utf8').split('\n')
  const from = lines.slice(start.line - 1, end.line)
  const last = from.length - 1
  const text = from.map((line, at) =>
    line.slice(at === 0 ? start.column - 1 : 0, at === last ? end.column - 1 : undefined),
  )
  const where = `${relative(ROOT, fileName)}:${start.line}:${start.column}`
  const note = status === 'NoCoverage' ? ' (no test comes here)' : ''
  return `  ${where} ${mutatorName}: ${toShort(text.join(' '))} → ${toShort(replacement ?? '')}${note}`
}

function toShort(code: string): string {
  const flat = code.replace(/\s+/gu, ' ').trim()
  return flat.length > 70 ? `${flat.slice(0, 67)}…` : flat
}
