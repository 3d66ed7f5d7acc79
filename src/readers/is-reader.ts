// Tells a file of a reader or a group by its look, before it is read.

/** A name, and a step, lessons or members. Configs and sequences are none. */
export const looksLikeReader = (text: string): boolean =>
  /^name\s*:/m.test(text) && /^(?:step|lessons|members)\s*:/m.test(text) && !/^steps\s*:/m.test(text)
