// Puts a picture into a space: as large as it goes, in the middle, never stretched; an empty frame where there is none.

import type { Shown } from '../ask.ts'
import type { Item, ReadAs } from '../sheet.ts'
import type { Place } from './grid.ts'

export function putPicture(shown: Shown | undefined, place: Place, readAs: Omit<ReadAs, 'role' | 'alt'>): Item {
  if (!shown) return putEmptyFrame(place, readAs)
  const { picture, alt } = shown
  const scale = Math.min(place.width / picture.width, place.height / picture.height)
  const [width, height] = [picture.width * scale, picture.height * scale]
  return {
    kind: 'picture',
    picture,
    x: place.x + (place.width - width) / 2,
    y: place.y + (place.height - height) / 2,
    width,
    height,
    readAs: { ...readAs, role: 'Figure', alt },
  }
}

/** To draw in by hand. */
function putEmptyFrame(place: Place, readAs: Omit<ReadAs, 'role' | 'alt'>): Item {
  const width = Math.min(place.width, place.height * 1.3)
  return {
    kind: 'frame',
    use: 'empty',
    x: place.x + (place.width - width) / 2,
    y: place.y,
    width,
    height: place.height,
    readAs: { ...readAs, role: 'Figure', alt: 'An empty frame to draw in' },
  }
}

export const inset = ({ x, y, width, height }: Place, by: number): Place => ({
  x: x + by,
  y: y + by,
  width: width - 2 * by,
  height: height - 2 * by,
})
