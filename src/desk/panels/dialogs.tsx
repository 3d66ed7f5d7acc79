// What lies over the page, one at a time: a new story, the print, a sequence, two texts side by side.

import { usePage } from '../page.ts'
import { NewStory } from './new-story.tsx'
import { PrintSheet } from './print.tsx'
import { SequenceSheet } from './sequence.tsx'
import { Sheet } from './sheet.tsx'

export function Dialogs() {
  const { state } = usePage()
  const dialog = state.dialog.value
  switch (dialog?.kind) {
    case undefined:
      return null
    case 'new':
      return <NewStory copyOf={dialog.copyOf} />
    case 'print':
      return <PrintSheet />
    case 'sequence':
      return <SequenceSheet name={dialog.name} key={dialog.name} />
    case 'both':
      return (
        <Sheet title={dialog.title} isWide>
          <div class="both">
            {dialog.texts.map((text, at) => (
              <section key={dialog.names[at]} aria-labelledby={`both-${at}`}>
                <h3 id={`both-${at}`}>{dialog.names[at]}</h3>
                {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keys */}
                <pre tabIndex={0}>{text}</pre>
              </section>
            ))}
          </div>
        </Sheet>
      )
  }
}
