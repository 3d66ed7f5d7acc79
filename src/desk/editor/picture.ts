// A picture of the story, drawn in its line; an empty frame with the file's name where it is missing.

import { Facet } from '@codemirror/state'
import { type EditorView, WidgetType } from '@codemirror/view'

/** Gives the address of a picture by its path as the story writes it; undefined where there is none. */
export type FindPicture = (source: string) => Promise<string | undefined>

export const findPicture = Facet.define<FindPicture, FindPicture>({
  combine: ([first]) => first ?? (() => Promise.resolve(undefined)),
})

export interface PictureLine {
  readonly alt: string
  readonly source: string
}

/** @example ![a red hat](pictures/hat.svg "Tam's hat") */
export function toPictureLine(text: string): PictureLine {
  const [, alt = '', source = ''] = /^!\[([^\]]*)\]\(\s*<?([^)>\s]*)>?[^)]*\)/.exec(text.trim()) ?? []
  return { alt, source }
}

export class PictureWidget extends WidgetType {
  readonly picture: PictureLine

  constructor(picture: PictureLine) {
    super()
    this.picture = picture
  }

  override eq({ picture }: PictureWidget): boolean {
    return picture.alt === this.picture.alt && picture.source === this.picture.source
  }

  override toDOM(view: EditorView): HTMLElement {
    const { alt, source } = this.picture
    const dom = document.createElement('span')
    dom.className = 'picture'
    const frame = dom.appendChild(document.createElement('span'))
    frame.textContent = source
    void view.state
      .facet(findPicture)(source)
      .then((address) => {
        if (address === undefined) {
          frame.textContent = `${source} is not in this folder`
          return
        }
        const image = document.createElement('img')
        image.alt = alt
        image.addEventListener('load', () => view.requestMeasure())
        image.src = address
        frame.replaceWith(image)
      })
    return dom
  }

  override get estimatedHeight(): number {
    return 150
  }
}
