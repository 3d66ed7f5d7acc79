// What every report on readers says.

export const CAUTION =
  'This judges the text of the books, by what was taught. It assesses no child and tests for no condition. Names stay on this machine.'
