// Changes to a story that a person decides on: pure, from findings and decisions to the new text and a diff.

export { applyDecisions, applyEdits, type Decision, decideByFirst } from './decide.ts'
export { type Answer, parseAnswer, toQuestion } from './dialogue.ts'
export { toUnifiedDiff } from './diff.ts'
export { type DiffPlace, toDiffPlace } from './diff-name.ts'
export { type Finding, toFindings } from './findings.ts'
export { putIn } from './put-in.ts'
export { shapeTyped } from './typed.ts'
