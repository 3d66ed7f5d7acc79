-- Drives neovim's own language client: opens a story, then prints its diagnostics, a hover and the quick fixes as JSON.
-- Run as: nvim --headless -u NONE STORY -c 'luafile client.lua'. Keeps to what neovim 0.7 has.

local command = vim.json.decode(vim.env.BATTLEDORE_COMMAND)
local line = tonumber(vim.env.BATTLEDORE_LINE)
local column = tonumber(vim.env.BATTLEDORE_COLUMN)

local function finish(result)
  io.stdout:write(vim.json.encode(result) .. '\n')
  io.stdout:flush()
  vim.cmd('qall!')
end

local id = vim.lsp.start_client({ name = 'battledore', cmd = command, root_dir = vim.fn.getcwd() })
if not id then return finish({ error = 'the server did not start' }) end
local buffer = vim.api.nvim_get_current_buf()
vim.api.nvim_buf_set_option(buffer, 'filetype', 'markdown')
vim.lsp.buf_attach_client(buffer, id)

local function wait(test)
  return vim.wait(20000, test, 20)
end

local function diagnostics()
  return vim.tbl_map(function(one)
    return { line = one.lnum, column = one.col, endLine = one.end_lnum, endColumn = one.end_col, message = one.message, severity = one.severity, source = one.source, code = one.code }
  end, vim.diagnostic.get(buffer))
end

if not wait(function() return #vim.diagnostic.get(buffer) > 0 end) then return finish({ error = 'no diagnostics came' }) end
local result = { version = tostring(vim.version().major) .. '.' .. tostring(vim.version().minor), diagnostics = diagnostics() }

local position = { line = line, character = column }
local document = vim.lsp.util.make_text_document_params(buffer)
local function ask(method, params)
  local answers = vim.lsp.buf_request_sync(buffer, method, params, 20000) or {}
  return (answers[id] or {}).result
end

result.hover = ask('textDocument/hover', { textDocument = document, position = position })
local range = { start = position, ['end'] = position }
local actions = ask('textDocument/codeAction', { textDocument = document, range = range, context = { diagnostics = {} } }) or {}
result.actions = vim.tbl_map(function(one) return one.title end, actions)

-- The fix that makes it a sight word, put into the text by the editor itself.
for _, action in ipairs(actions) do
  if action.title:find('sight word') then vim.lsp.util.apply_workspace_edit(action.edit, vim.lsp.get_client_by_id(id).offset_encoding) end
end
result.text = table.concat(vim.api.nvim_buf_get_lines(buffer, 0, -1, false), '\n')
wait(function() return #vim.diagnostic.get(buffer) < #result.diagnostics end)
result.after = diagnostics()
vim.lsp.stop_client(id)
finish(result)
