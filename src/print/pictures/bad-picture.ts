// A picture that cannot be printed, told with what to do about it.

import { fail, type Result } from '../../problem/index.ts'

/** @param message finishes `NAME …` */
export const toBadPicture = (message: string, note = 'Save it anew as PNG or JPEG.'): Result<never> =>
  fail({ code: 'bad-picture', message, note })
