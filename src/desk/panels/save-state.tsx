// Whether what is on the screen is also on the disk, in the bar.

import { toClock } from '../clock.ts'
import { usePage } from '../page.ts'

export function SaveState() {
  const { state, tools } = usePage()
  const saved = state.session.value?.saved.value
  if (saved === undefined) return null
  if (saved.kind === 'saved')
    return <span class="save-state">{saved.at === undefined ? 'Nothing to save' : `Saved ${toClock(saved.at)}`}</span>
  if (saved.kind === 'read-only') return <span class="save-state">For reading only</span>
  return (
    <span class="save-state open">{tools.folder.kind === 'single' ? 'Not stored: press Save' : 'Not saved yet'}</span>
  )
}
