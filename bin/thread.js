// A thread of the program: answers what it is asked, one after the other, by a function of a built file.
const { parentPort, workerData } = require('node:worker_threads')
const { load } = require('./load.js')

const { piece, work } = workerData
const answerTo = load(piece)[work]
let before = Promise.resolve()
parentPort.on('message', asked => {
  before = before.then(() => answerTo(asked)).then(answer => parentPort.postMessage(answer))
})
