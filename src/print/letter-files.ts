// The letters that come with the package, by name, and the files that hold them.

export const LETTER_FILES: Readonly<Record<string, { readonly plain: string; readonly bold?: string }>> = {
  abeezee: { plain: 'abeezee.woff' },
  andika: { plain: 'andika.ttf', bold: 'andika-bold.ttf' },
  lexend: { plain: 'lexend.woff', bold: 'lexend-bold.woff' },
}

/** Shares of the font's square: a tenth is about a third of the width of an n. */
export const SPACINGS = { usual: 0, wide: 0.05, wider: 0.1 } as const
