// The language server: what it can do, and who answers what the editor says.

import {
  type ClientCapabilities,
  CodeActionKind,
  type Connection,
  DidChangeWatchedFilesNotification,
  type Hover,
  MarkupKind,
  type ServerCapabilities,
  TextDocumentSyncKind,
  TextDocuments,
} from 'vscode-languageserver'
import { TextDocument } from 'vscode-languageserver-textdocument'
import { createAnswers } from './answers.ts'
import type { Host } from './host.ts'
import type { HoverText } from './hover.ts'
import { createLiveChecks } from './live-checks.ts'
import { toRange } from './ranges.ts'

const CAPABILITIES: ServerCapabilities = {
  textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental, save: true },
  hoverProvider: true,
  completionProvider: {},
  codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix] },
}

/** Settings that stories may depend on. */
const WATCHED = ['**/*.{yaml,yml}', '**/.battledore.yaml', '**/.{git,battledore}ignore']

/** Gives what stops it, to be called before the connection goes. */
export function startServer(connection: Connection, host: Host, version: string): () => void {
  const documents = new TextDocuments(TextDocument)
  let client: ClientCapabilities = {}
  let isStopped = false
  const reportError = (error: unknown): void => {
    if (!isStopped) connection.console.error(error instanceof Error ? (error.stack ?? error.message) : String(error))
  }
  const checks = createLiveChecks(connection, documents, host, reportError)
  const answers = createAnswers(host, checks, reportError)

  connection.onInitialize(({ capabilities }) => {
    client = capabilities
    return { serverInfo: { name: 'battledore', version }, capabilities: CAPABILITIES }
  })
  connection.onInitialized(() => {
    if (client.workspace?.didChangeWatchedFiles?.dynamicRegistration) watchSettings(connection).catch(reportError)
  })
  connection.onDidChangeWatchedFiles(checks.refresh)
  documents.onDidSave(checks.refresh)
  documents.onDidChangeContent(({ document }) => checks.soon(document.uri))
  documents.onDidClose(({ document }) => checks.forget(document.uri))

  connection.onHover(async ({ textDocument, position }) => {
    const document = documents.get(textDocument.uri)
    const found = document && (await answers.hover(document, document.offsetAt(position)))
    return found ? toHoverAnswer(document, found, client) : null
  })
  connection.onCodeAction(({ textDocument, range, context }) => {
    const document = documents.get(textDocument.uri)
    return document ? answers.actions(document, range, context.only) : []
  })
  connection.onCompletion(({ textDocument, position }) => {
    const document = documents.get(textDocument.uri)
    return document ? answers.complete(document, document.offsetAt(position)) : null
  })

  documents.listen(connection)
  connection.listen()
  return () => {
    isStopped = true
    checks.stop()
  }
}

const watchSettings = ({ client }: Connection): Promise<unknown> =>
  client.register(DidChangeWatchedFilesNotification.type, {
    watchers: WATCHED.map((globPattern) => ({ globPattern })),
  })

/** Columns need letters of one width: a block of code where the editor shows Markdown. */
function toHoverAnswer(document: TextDocument, found: HoverText, { textDocument }: ClientCapabilities): Hover {
  const isMarkdown = textDocument?.hover?.contentFormat?.includes(MarkupKind.Markdown) ?? false
  const contents = isMarkdown
    ? { kind: MarkupKind.Markdown, value: `\`\`\`text\n${found.text}\`\`\`` }
    : { kind: MarkupKind.PlainText, value: found.text }
  return { contents, range: toRange(document, found) }
}
