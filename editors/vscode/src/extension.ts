// Starts the language server for stories in Markdown: that of the opened folder where it has one, else our own.

import { commands, type ExtensionContext, window, workspace } from 'vscode'
import { LanguageClient, TransportKind } from 'vscode-languageclient/node'
import { findServer } from './find-server.ts'

let client: LanguageClient | undefined

export async function activate(context: ExtensionContext): Promise<void> {
  context.subscriptions.push(
    commands.registerCommand('battledore.restart', async () => {
      await client?.stop()
      await start(context)
    }),
    workspace.onDidChangeConfiguration(async (event) => {
      if (!event.affectsConfiguration('battledore.server')) return
      await client?.stop()
      await start(context)
    }),
  )
  await start(context)
}

export const deactivate = async (): Promise<void> => client?.stop()

async function start(context: ExtensionContext): Promise<void> {
  const module = findServer({
    setting: workspace.getConfiguration('battledore').get<string>('server') ?? '',
    folders: (workspace.workspaceFolders ?? []).map(({ uri }) => uri.fsPath),
    isTrusted: workspace.isTrusted,
    own: context.asAbsolutePath('server/cli.cjs'),
  })
  const options = { module, args: ['serve'], transport: TransportKind.stdio }
  client = new LanguageClient('battledore', 'Battledore', { run: options, debug: options }, {
    documentSelector: [
      { language: 'markdown', scheme: 'file' },
      { language: 'markdown', scheme: 'untitled' },
    ],
  })
  try {
    await client.start()
  } catch (error) {
    void window.showErrorMessage(`Battledore could not be started from ${module}: ${error instanceof Error ? error.message : String(error)}`)
  }
}
