// The picture set as it comes from its package: which icons it has, and each as an SVG of its own.

import { readFileSync } from 'node:fs'

interface IconSet {
  readonly width?: number
  readonly height?: number
  readonly icons: Readonly<Record<string, { readonly body: string; readonly width?: number; readonly height?: number }>>
}

export interface Icons {
  has(name: string): boolean
  /** undefined where the set has no such icon. */
  svg(name: string): string | undefined
}

const SET = new URL('../../node_modules/@iconify-json/fluent-emoji-flat/icons.json', import.meta.url)

/** Other names of an icon are not followed: the table says the icon's own name. */
export function openIcons(): Icons {
  const { icons, width = 32, height = 32 } = JSON.parse(readFileSync(SET, 'utf8')) as IconSet
  return {
    has: (name) => Object.hasOwn(icons, name),
    svg(name) {
      const icon = Object.hasOwn(icons, name) ? icons[name] : undefined
      if (icon === undefined) return undefined
      const box = `0 0 ${icon.width ?? width} ${icon.height ?? height}`
      return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box}">${icon.body}</svg>`
    },
  }
}
