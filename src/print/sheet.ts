// What a sheet of paper holds: letters, pictures and lines, each at its place, in millimetres from the top left corner.

/** Bold is for letters that are marked, and for what is for the grown-up. */
export type Face = 'plain' | 'bold'

/** `quiet` is for what is not meant for the child: page numbers, hints, the letter that says which strip a word is from. */
export type Ink = 'black' | 'quiet'

/** What an item is when the sheets are read aloud, and its place there: parts in order, and in a part the units in order. */
export interface ReadAs {
  readonly part: number
  readonly at: number
  readonly role: 'H1' | 'H2' | 'P' | 'Figure'
  /** Of a figure: what it shows. */
  readonly alt?: string
}

/** An item without `readAs` is passed over by a screen reader: cut marks, folds, page numbers. */
interface Read {
  readonly readAs?: ReadAs
}

export interface TextItem extends Read {
  readonly kind: 'text'
  readonly text: string
  readonly face: Face
  readonly ink: Ink
  /** The height of the font's square. */
  readonly size: number
  readonly x: number
  readonly baseline: number
}

export interface PictureItem extends Read {
  readonly kind: 'picture'
  readonly picture: Picture
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** What a line is for says how it is drawn. */
export type LineUse = 'bar' | 'cut' | 'fold' | 'measure' | 'rule' | 'scissors'

export interface LineItem {
  readonly kind: 'line'
  readonly use: LineUse
  readonly from: readonly [x: number, y: number]
  readonly to: readonly [x: number, y: number]
}

/** `empty` is a frame to draw in, `head` the frame of a card that names a group. */
export interface FrameItem extends Read {
  readonly kind: 'frame'
  readonly use: 'empty' | 'head'
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** Items at places of their own: their corner stands at x, y; upside down, it is their far corner. */
export interface GroupItem {
  readonly kind: 'group'
  readonly x: number
  readonly y: number
  /** Degrees, clockwise. */
  readonly turn: 0 | 90 | 180 | 270
  readonly items: readonly Item[]
}

export type Item = TextItem | PictureItem | LineItem | FrameItem | GroupItem

export interface Sheet {
  readonly width: number
  readonly height: number
  readonly items: readonly Item[]
}

/** A picture that can be drawn: whole and of a known kind. */
export type Picture =
  | { readonly kind: 'svg'; readonly svg: string; readonly width: number; readonly height: number }
  | { readonly kind: 'png' | 'jpeg'; readonly bytes: Uint8Array; readonly width: number; readonly height: number }

export interface Print {
  readonly title: string
  readonly sheets: readonly Sheet[]
  /** How the printer must turn the paper; undefined where it is printed on one side. */
  readonly duplex: 'short-edge' | 'long-edge' | undefined
}
