// Asks yaml-language-server, as an editor does, over its protocol on standard input and output. Every answer is held against
// what the files of the project say: good files have no fault, broken ones have theirs at the line that the project's own message
// names, and completion and hover have the fields and descriptions of the schema.
import {spawn} from 'node:child_process'
import fs from 'node:fs'
import path from 'node:path'
import {pathToFileURL} from 'node:url'

const [out, modules] = process.argv.slice(2)
const schemaPath = path.resolve(out, 'unpin.schema.json')
const schema = JSON.parse(fs.readFileSync(schemaPath, 'utf8'))

// ---- the protocol: messages with a header, answered by their number

const server = spawn('node', [path.join(modules, 'yaml-language-server/bin/yaml-language-server'), '--stdio'], {stdio: ['pipe', 'pipe', 'inherit']})
const waiting = new Map()
const faults = new Map() // by address, the last list of diagnostics, and who waits for it
let number = 0
let settings = {} // what the editor's user has set

function send(message) {
  const text = JSON.stringify({jsonrpc: '2.0', ...message})
  server.stdin.write(`Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`)
}

function ask(method, params) {
  const id = ++number
  send({id, method, params})
  return new Promise((done, failed) => waiting.set(id, {done, failed}))
}

let buffer = Buffer.alloc(0)
server.stdout.on('data', data => {
  buffer = Buffer.concat([buffer, data])
  for (;;) {
    const end = buffer.indexOf('\r\n\r\n')
    if (end < 0) return
    const length = Number(/Content-Length: (\d+)/i.exec(buffer.toString('utf8', 0, end))[1])
    if (buffer.length < end + 4 + length) return
    const message = JSON.parse(buffer.toString('utf8', end + 4, end + 4 + length))
    buffer = buffer.subarray(end + 4 + length)
    take(message)
  }
})

function take(message) {
  if (message.method === undefined) {
    const {done, failed} = waiting.get(message.id)
    waiting.delete(message.id)
    return message.error ? failed(new Error(message.error.message)) : done(message.result)
  }
  if (message.method === 'textDocument/publishDiagnostics') {
    const {uri, diagnostics} = message.params
    const heard = faults.get(uri)
    faults.delete(uri)
    heard?.(diagnostics)
  }
  if (message.id === undefined) return
  const answers = {
    'workspace/configuration': () => message.params.items.map(item => item.section === 'yaml' ? settings : {}),
  }
  send({id: message.id, result: answers[message.method]?.() ?? null})
}

// ---- files as an editor opens them

let opened = 0

// open shows a text to the server under a name of its own and returns its address and its faults.
async function open(text, associated) {
  const name = path.resolve(out, `file-${++opened}.${associated ? 'frame.yaml' : 'yaml'}`)
  fs.writeFileSync(name, text)
  const uri = pathToFileURL(name).href
  const told = new Promise(heard => faults.set(uri, heard))
  send({method: 'textDocument/didOpen', params: {textDocument: {uri, languageId: 'yaml', version: 1, text}}})
  return {uri, faults: await told}
}

const first = '# yaml-language-server: $schema=unpin.schema.json\n'

// at finds the mark | in a text: the text without it, and its place.
function at(marked) {
  const offset = marked.indexOf('|')
  const before = marked.slice(0, offset).split('\n')
  return {text: marked.slice(0, offset) + marked.slice(offset + 1), position: {line: before.length - 1, character: before.at(-1).length}}
}

async function complete(marked) {
  const {text, position} = at(first + marked)
  const {uri} = await open(text)
  const list = await ask('textDocument/completion', {textDocument: {uri}, position})
  return (list?.items ?? list ?? []).map(item => item.label)
}

async function hover(marked) {
  const {text, position} = at(first + marked)
  const {uri} = await open(text)
  const told = await ask('textDocument/hover', {textDocument: {uri}, position})
  return told ? (told.contents.value ?? told.contents) : ''
}

// ---- what is asked

let passed = 0, failed = 0
function hold(what, good, detail = '') {
  if (good) return passed++
  failed++
  console.log(`FAILED: ${what}${detail && ': ' + detail}`)
}

const files = folder => fs.readdirSync(folder).filter(f => f.endsWith('.yaml')).sort().map(f => path.join(folder, f))
const where = list => list.map(d => `${d.range.start.line}:${d.range.start.character} ${d.message}`).join(' | ')

async function goodFiles() {
  let n = 0
  for (const folder of ['problems/library', 'problems/starter', 'testdata/examples', 'testdata/refused']) {
    for (const file of files(folder).filter(f => path.basename(f) !== 'set.yaml')) {
      const text = fs.readFileSync(file, 'utf8')
      for (const associated of [false, true]) {
        const {faults} = await open(associated ? text : first + text, associated)
        hold(file, faults.length === 0, where(faults))
      }
      n++
    }
  }
  console.log(`${n} good files, each with the line at its top and by the setting: no fault told`)
}

async function brokenFiles() {
  let told = 0, silent = 0, sameLine = 0
  const other = []
  for (const file of files('testdata/broken')) {
    const text = fs.readFileSync(file)
    const expected = fs.readFileSync(file.replace(/yaml$/, 'txt'), 'utf8')
    const lines = [...expected.matchAll(/^[^\s:]+\.yaml:(\d+)/gm)].map(m => Number(m[1]))
    const {faults} = await open(text.toString('utf8'), true)
    if (faults.length === 0) {
      silent++
      continue
    }
    told++
    if (faults.some(d => lines.includes(d.range.start.line + 1))) sameLine++
    else other.push(`${path.basename(file)}: ours ${lines}, its ${where(faults)}`)
  }
  console.log(`${told + silent} broken files: of ${told} a fault is told, of ${sameLine} of these at a line of ours; ${silent} need a reader who knows frames`)
  if (process.env.SHOW) console.log(other.join('\n'))
  hold('faults at lines of ours', sameLine >= told * 0.85, `${sameLine} of ${told}`)
}

const frame = 'units: kN m\njoints: {A: [0, 0], B: [6, 0]}\nmembers: [AB]\nsupports: {A: pin, B: {roller: up}}\n'

async function places() {
  const cases = [
    ['a field that there is not', 'untis: kN m\n' + frame.replace('units: kN m\n', ''), 1, 0],
    ['a support that there is not', frame.replace('A: pin', 'A: hinge'), 4, 14],
    ['one number for a joint', frame.replace('[6, 0]', '[6]'), 2, 23],
    ['a load without its direction', frame + 'loads:\n  - {point: 12, on: AB, at: 2}\n', 6, 4],
    ['a word where a list is due', frame.replace('[AB]', 'AB'), 3, 9],
    ['a skill that there is not', frame + 'skills: [pick-body, guessing]\n', 5, 20],
    ['a grade beyond 6', frame + 'grade: 9\n', 5, 7],
    ['a convention that there is not', frame + 'ask: {moments: sideways}\n', 5, 15],
  ]
  for (const [what, text, line, character] of cases) {
    const {faults} = await open(first + text)
    hold(what, faults.some(d => d.range.start.line === line && d.range.start.character === character), where(faults))
    console.log(`  ${what}: ${where(faults)}`)
  }
  console.log(`${cases.length} faults made by hand, each at its line and column`)
}

async function completions() {
  const holds = async (what, marked, wanted, never = []) => {
    const labels = await complete(marked)
    const missing = wanted.filter(w => !labels.includes(w)), wrong = never.filter(w => labels.includes(w))
    hold(what, missing.length === 0 && wrong.length === 0, `missing ${missing}; too many ${wrong}; of ${labels}`)
    console.log(`  ${what}: ${labels.join(', ')}`)
  }
  await holds('the fields of a file', '|\n', Object.keys(schema.properties))
  await holds('the fields that are left', frame + '|\n', ['loads', 'given', 'text', 'vary'], ['joints', 'units'])
  await holds('the units', 'units: |\n', ['kN m', 'lb ft', 'P L'])
  await holds('a support', frame.replace('A: pin', 'A: |'), ['pin', 'fixed'])
  await holds('the kinds of load', frame + 'loads:\n  - |\n', ['point', 'couple', 'uniform', 'ramp', 'pulley'])
  await holds('the fields of a load', frame + 'loads:\n  - point: 12\n    |\n', ['to', 'on', 'at', 'joint'])
  await holds('a direction', frame + 'loads:\n  - point: 12\n    to: |\n', ['up', 'down', 'left', 'right', 'along', 'normal'])
  await holds('per', frame + 'loads:\n  - uniform: 12\n    to: down\n    on: AB\n    per: |\n', ['run', 'rise', 'length'])
  await holds('the conventions', frame + 'ask:\n  |\n', Object.keys(schema.properties.ask.properties))
  await holds('a convention', frame + 'ask:\n  shear: |\n', ['clockwise', 'counter-clockwise'])
  await holds('the skills', frame + 'skills:\n  - |\n', ['pick-body', 'two-force-member', 'closing-check'])
}

async function hovers() {
  let n = 0
  for (const [field, of] of Object.entries(schema.properties)) {
    const told = (await hover(`|${field}: x\n`)).replaceAll('&nbsp;', ' ').replace(/\\([^\w])/g, '$1')
    hold(`hover on ${field}`, told.includes(of.description.split('. Example')[0]), told)
    n++
  }
  const inside = [['ask', 'ask: {|figures: 3}\n', 'Significant figures'], ['point', frame + 'loads:\n  - {|point: 12, to: down, on: AB, at: 2}\n', 'force'],
    ['at', frame + 'loads:\n  - {point: 12, to: down, on: AB, |at: 2}\n', 'along that member'], ['rope', frame + 'loads:\n  - {pulley: A, |rope: 12, to: [down, left]}\n', 'tension of the rope']]
  for (const [what, marked, words] of inside) {
    const told = await hover(marked)
    hold(`hover on ${what}`, told.length > 20 && told.includes(words), told)
    console.log(`  ${what}: ${told.replace(/\s+/g, ' ')}`)
    n++
  }
  console.log(`${n} words hovered over: the description of each`)
}

await ask('initialize', {processId: process.pid, rootUri: pathToFileURL(path.resolve(out)).href, capabilities: {
  textDocument: {completion: {completionItem: {snippetSupport: true}}, hover: {contentFormat: ['markdown']}, publishDiagnostics: {}},
  workspace: {configuration: true, didChangeConfiguration: {dynamicRegistration: true}},
}})
settings = {validate: true, completion: true, hover: true, format: {enable: false}, schemaStore: {enable: false}, schemas: {[pathToFileURL(schemaPath).href]: ['*.frame.yaml']}}
send({method: 'initialized', params: {}})
send({method: 'workspace/didChangeConfiguration', params: {settings: {yaml: settings}}})
await new Promise(done => setTimeout(done, 500))
for (const part of [goodFiles, brokenFiles, places, completions, hovers]) await part()
await ask('shutdown')
send({method: 'exit'})
console.log(`${passed} passed, ${failed} failed`)
process.exit(failed ? 1 : 0)
