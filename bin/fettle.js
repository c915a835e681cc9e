#!/usr/bin/env node
require('./load.js').load('main.cjs')
