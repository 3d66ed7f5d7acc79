// The ground floor: what is wrong with something that somebody wrote, for every room above.

export {
  type Found,
  fail,
  inOrder,
  isError,
  succeed,
  toExpected,
  toPlace,
  toProblem,
  toProblemKey,
  toRange,
  withOrigin,
} from './problem.ts'
export { toProblemLine, toProblemText } from './text.ts'
export type { Origin, Place, Problem, ProblemCode, Range, Result, Sourced } from './types.ts'
