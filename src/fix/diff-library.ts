// What we use of the library of diffs, and nothing else of it: a part of its own, read where a diff is shown.

export { formatPatch, OMIT_HEADERS, structuredPatch } from 'diff'
