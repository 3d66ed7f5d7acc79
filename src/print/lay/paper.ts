// The two papers that homes and schools have, and what a printer leaves blank at the edges.

export interface Paper {
  readonly name: PaperName
  /** Millimetres, held upright. */
  readonly width: number
  readonly height: number
}

export type PaperName = 'a4' | 'letter'

/** ISO 216 for A4; US Letter is 8.5 by 11 inches (ANSI/ASME Y14.1). */
export const PAPERS: Readonly<Record<PaperName, Paper>> = {
  a4: { name: 'a4', width: 210, height: 297 },
  letter: { name: 'letter', width: 215.9, height: 279.4 },
}

/** Home printers print nothing nearer to an edge than some 3 to 6 mm: own choice, no source. */
export const EDGE = 8

export const onSide = ({ name, width, height }: Paper): Paper => ({ name, width: height, height: width })
