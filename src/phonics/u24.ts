// Numbers of three bytes, the lowest first, as the files of the package hold places.

/** The number at a place; 0 beyond the end. */
export const readU24 = (bytes: Uint8Array, at: number): number =>
  (bytes[at] ?? 0) | ((bytes[at + 1] ?? 0) << 8) | ((bytes[at + 2] ?? 0) << 16)

/** Its bytes. @param value below 2 to the power of 24 */
export const toU24 = (value: number): readonly number[] => [value & 255, (value >> 8) & 255, value >> 16]
