// The language server: what the editor asks, and who answers.

import {
  type ClientCapabilities,
  CodeActionKind,
  type Connection,
  DidChangeWatchedFilesNotification,
  type Hover,
  type InitializeResult,
  MarkupKind,
  TextDocumentSyncKind,
  TextDocuments,
} from 'vscode-languageserver'
import { TextDocument } from 'vscode-languageserver-textdocument'
import { rules } from '../../rules/index.ts'
import { DEFAULT_SEQUENCE, type PreparedStory } from '../check/check-story.ts'
import { isMissing } from '../check/resources.ts'
import { withSuggestions } from '../check/suggest.ts'
import { readFrontMatter, resolveSettings } from '../config/index.ts'
import type { Message } from '../lint/types.ts'
import { readStory } from '../story/index.ts'
import { toActions } from './actions.ts'
import { toSettingItems, toWordItems } from './complete.ts'
import { createConfigMarks } from './config-marks.ts'
import { type Looked, look, MOST_LIVE, prepare, toOpenStory } from './desk.ts'
import type { Host } from './host.ts'
import { toHover } from './hover.ts'
import { isTouching, toBlamed } from './ranges.ts'
import { type Completer, findCompleter } from './readable-words.ts'

/** Milliseconds that typing must pause before a check. */
const PAUSE = 150

/** Settings that stories may depend on. */
const WATCHED = ['**/*.{yaml,yml}', '**/.battledore.yaml', '**/.{git,battledore}ignore']

/** Gives what stops it, to be called before the connection goes. */
export function startServer(connection: Connection, host: Host, version: string): () => void {
  const documents = new TextDocuments(TextDocument)
  const looked = new Map<string, Looked>()
  const timers = new Map<string, NodeJS.Timeout>()
  const markConfigs = createConfigMarks(host, (params) => void connection.sendDiagnostics(params))
  let client: ClientCapabilities = {}
  let isStopped = false

  connection.onInitialize(({ capabilities }): InitializeResult => {
    client = capabilities
    return {
      serverInfo: { name: 'battledore', version },
      capabilities: {
        textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental, save: true },
        hoverProvider: true,
        completionProvider: {},
        codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix] },
      },
    }
  })
  connection.onInitialized(() => {
    if (!client.workspace?.didChangeWatchedFiles?.dynamicRegistration) return
    const watchers = WATCHED.map((globPattern) => ({ globPattern }))
    connection.client.register(DidChangeWatchedFilesNotification.type, { watchers }).catch(tellError)
  })
  connection.onDidChangeWatchedFiles(() => {
    if (host.refresh()) checkAll()
  })

  documents.onDidChangeContent(({ document }) => checkSoon(document.uri, PAUSE + (looked.get(document.uri)?.took ?? 0)))
  documents.onDidSave(() => {
    if (host.refresh()) checkAll()
  })
  documents.onDidClose(({ document: { uri } }) => {
    clearTimeout(timers.get(uri))
    timers.delete(uri)
    looked.delete(uri)
    void connection.sendDiagnostics({ uri, diagnostics: [] })
  })

  function tellError(error: unknown): void {
    if (!isStopped) connection.console.error(error instanceof Error ? (error.stack ?? error.message) : String(error))
  }
  function checkAll(): void {
    for (const { uri } of documents.all()) checkSoon(uri, 0)
  }
  function checkSoon(uri: string, delay: number): void {
    clearTimeout(timers.get(uri))
    timers.set(
      uri,
      setTimeout(() => void checkNow(uri).catch(tellError), delay),
    )
  }

  async function checkNow(uri: string): Promise<Looked | undefined> {
    clearTimeout(timers.get(uri))
    timers.delete(uri)
    const document = documents.get(uri)
    if (!document) return undefined
    if (host.refresh()) for (const other of documents.all()) if (other.uri !== uri) checkSoon(other.uri, 0)
    const result = await look(document, host)
    // A newer text has come meanwhile, and a check of it with it.
    if (isStopped || documents.get(uri)?.version !== result.version) return undefined
    looked.set(uri, result)
    markConfigs(await host.findChain(host.toPath(uri)))
    void connection.sendDiagnostics({ uri, version: result.version, diagnostics: [...result.diagnostics] })
    return result
  }

  /** What was said of the text as it is now. */
  async function findLooked(document: TextDocument): Promise<Looked | undefined> {
    const last = looked.get(document.uri)
    return last?.version === document.version && !timers.has(document.uri) ? last : checkNow(document.uri)
  }

  connection.onHover(async ({ textDocument, position }): Promise<Hover | null> => {
    const document = documents.get(textDocument.uri)
    const prepared = document && (await prepare(document, host))
    const found = document && prepared && toHover(prepared, document.offsetAt(position))
    if (!found) return null
    const range = { start: document.positionAt(found.start), end: document.positionAt(found.end) }
    const isMarkdown = client.textDocument?.hover?.contentFormat?.includes(MarkupKind.Markdown) ?? false
    const contents = isMarkdown
      ? { kind: MarkupKind.Markdown, value: `\`\`\`text\n${found.text}\`\`\`` }
      : { kind: MarkupKind.PlainText, value: found.text }
    return { contents, range }
  })

  connection.onCodeAction(async ({ textDocument, range, context }) => {
    const document = documents.get(textDocument.uri)
    if (!document || (context.only && !context.only.some((kind) => CodeActionKind.QuickFix.startsWith(kind)))) return []
    const messages = (await findLooked(document))?.checked?.messages ?? []
    const asked = { start: document.offsetAt(range.start), end: document.offsetAt(range.end) }
    const under = messages.filter((message) => isTouching(toBlamed(message), asked))
    const prepared = under.length > 0 ? await prepare(document, host) : undefined
    return prepared ? toActions(await addSuggestions(under, prepared), { document, prepared }) : []
  })

  connection.onCompletion(async ({ textDocument, position }) => {
    const document = documents.get(textDocument.uri)
    if (!document || document.getText().length > MOST_LIVE) return null
    const offset = document.offsetAt(position)
    const { frontMatter } = readStory(document.getText())
    if (frontMatter && offset >= frontMatter.valueStart && offset <= frontMatter.end - 3) {
      const yaml = document.getText().slice(frontMatter.valueStart, offset)
      return toSettingItems(document, offset, yaml, frontMatter.value, await toSettingSources(document))
    }
    const prepared = await prepare(document, host)
    const complete = prepared && toCompleter(prepared)
    return complete ? { isIncomplete: true, items: toWordItems(document, offset, complete) } : null
  })

  /** Without the data of words, all else still works. */
  function toCompleter({ sequence, step, reader, context, settings }: PreparedStory): Completer | undefined {
    try {
      const phonics = host.resources.phonicsFor(context.accent)
      const names = settings.names.map(({ value }) => value)
      return findCompleter({ ...host.words(), sequence, step, reader, phonics, names, ...toFitness(settings) })
    } catch (error) {
      tellError(error)
      return undefined
    }
  }
  async function addSuggestions(messages: readonly Message[], prepared: PreparedStory): Promise<readonly Message[]> {
    const { sequence, step, reader, context, settings } = prepared
    try {
      const help = await host.resources.wordHelp?.()
      if (!help) return messages
      const suggester = help.suggesterFor({ sequence, step, reader, ...toFitness(settings) })
      return await withSuggestions(messages, context, { help, suggester, tagger: host.resources.tagger })
    } catch (error) {
      tellError(error)
      return messages
    }
  }

  /** The sequence that holds for a story, even where its step is still to be written. */
  async function toSettingSources(document: TextDocument) {
    const { storyPath, path, source } = toOpenStory(document, host)
    const chain = await host.findChain(storyPath)
    const own = await readFrontMatter({ path, text: source }, readStory(source).frontMatter, rules)
    const settings = resolveSettings({
      chain,
      storyPath,
      frontMatter: own.layer,
      rules,
      defaultSequence: DEFAULT_SEQUENCE,
    })
    const sequence = await host.resources.sequence(settings.sequence.value, settings.accent.value)
    return { sequence: isMissing(sequence) ? undefined : sequence, sequenceNames: host.builtIns(), rules }
  }

  documents.listen(connection)
  connection.listen()
  return () => {
    isStopped = true
    for (const timer of timers.values()) clearTimeout(timer)
  }
}

/** What a school adds to the words that are never proposed, and what it clears. */
const toFitness = ({ unfitWords, fitWords }: PreparedStory['settings']) => ({
  unfit: unfitWords.map(({ value }) => value),
  fit: fitWords.map(({ value }) => value),
})
