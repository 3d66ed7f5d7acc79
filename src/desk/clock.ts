// Times of day as the page shows them.

/** @example 10:42 */
export const toClock = (at: number): string =>
  new Date(at).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' })
