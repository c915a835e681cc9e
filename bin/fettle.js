#!/usr/bin/env node
require('./load.js').load('main.cjs').start(`${__dirname}/thread.js`)
