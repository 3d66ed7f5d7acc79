// The first thing that the page of one file shows: which folder or file it is about, and what this page does with it.

export interface Welcome {
  /** The folder of the last time. */
  readonly last: string | undefined
  /** Missing where this browser shows a page no folder. */
  pick?(): Promise<void>
  /** False where the maker did not allow it. */
  again?(): Promise<boolean>
  openFiles(files: Iterable<File>): Promise<void>
  notices(): Promise<string>
}

const CAUTION =
  'It checks text. It assesses no child and is no test for any condition. Nothing leaves this machine: the page asks the internet for nothing.'

function make<Name extends keyof HTMLElementTagNameMap>(name: Name, text = '', given: object = {}) {
  const element = Object.assign(document.createElement(name), given)
  if (text !== '') element.textContent = text
  return element
}

export function showWelcome(root: Element, welcome: Welcome): void {
  const said = make('p', '', { className: 'status' })
  said.setAttribute('role', 'status')
  /** A press on Cancel in the browser's own window is no trouble. */
  const press = (text: string, run: () => Promise<unknown>): HTMLButtonElement => {
    const button = make('button', text, { type: 'button' })
    button.addEventListener('click', () => {
      run().then(
        (done) => {
          if (done === false) said.textContent = 'The browser was not allowed to open that folder.'
        },
        (error: unknown) => {
          if (!(error instanceof Error) || error.name !== 'AbortError')
            said.textContent = 'That could not be opened. Choose another folder, or open a file.'
        },
      )
    })
    return button
  }
  const { pick, again, last } = welcome
  const buttons = [
    ...(again && last !== undefined ? [press(`Open the folder ${last} again`, again)] : []),
    ...(pick ? [press('Choose the folder of my stories', pick)] : []),
    press('Open single files', () => askForFiles(welcome)),
    press('Begin with a new story', () => welcome.openFiles([])),
  ]
  const how = pick
    ? 'In a folder that you choose, stories are saved by themselves while you write. Single files are saved when you press Save: the browser then downloads them.'
    : 'This browser shows a page no folders. Open single files: they are saved when you press Save, and the browser downloads them.'
  const main = make('main', '', { className: 'welcome' })
  const row = make('p', '', { className: 'welcome-ways' })
  row.append(...buttons)
  main.append(make('h1', 'The writing desk'), make('p', how), row, said, make('p', CAUTION), toNotices(welcome))
  root.replaceChildren(main)
}

function toNotices({ notices }: Welcome): HTMLElement {
  const details = make('details')
  const text = make('pre')
  details.append(make('summary', 'Licences of what is inside'), text)
  details.addEventListener('toggle', () => void notices().then((all) => (text.textContent = all)), { once: true })
  return details
}

function askForFiles({ openFiles }: Welcome): Promise<void> {
  return new Promise((done, refuse) => {
    const input = make('input', '', {
      type: 'file',
      multiple: true,
      accept: '.md,.markdown,.yaml,.yml,.png,.jpg,.jpeg,.svg',
    })
    input.addEventListener('cancel', () => done())
    input.addEventListener('change', () => openFiles(input.files ?? []).then(done, refuse))
    input.click()
  })
}
