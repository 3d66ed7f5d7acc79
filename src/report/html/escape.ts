// Text made safe for a page.

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

/** For text and for attributes in quotes. Control characters, which no page may hold, become the replacement character. */
export const escapeHtml = (text: string): string =>
  text.replace(/[&<>"']/g, (character) => ENTITIES[character] ?? character).replace(/(?![\t\n\r])\p{Cc}/gu, '\uFFFD')
