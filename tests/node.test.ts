// `battledore/node`: what the package ships, opened for programs.

import { expect, it } from 'vitest'
import { listBuiltIns, loadBuiltIn } from '../src/node.ts'

it('opens each built-in sequence in its own accent, or in another', () => {
  for (const name of listBuiltIns()) expect(loadBuiltIn(name).name).toBe(name)
  expect(loadBuiltIn('series').accent).toBe('general-american')
  expect(loadBuiltIn('series', 'southern-british').accent).toBe('southern-british')
})

it('throws where there is no such sequence, with the nearest or all', () => {
  expect(() => loadBuiltIn('serie')).toThrow(
    new RangeError('There is no built-in sequence `serie`. Did you mean `series`?'),
  )
  expect(() => loadBuiltIn('../secrets')).toThrow('There are common-core, england, series.')
})
