// What must be said with an answer, whatever its form.

/** With every report on readers. */
export const READER_CAUTION =
  'This judges the text of the books, by what was taught. It assesses no child and tests for no condition. Names stay on this machine.'

/** Small parts are a choking hazard for young children: said wherever objects are listed. */
export const OBJECT_CAUTION =
  'Small objects can choke a young child. Use none that fails the small-parts test (US 16 CFR 1501; EU EN 71-1), watch children while they use the box, and follow your local rules.'
