#!/usr/bin/env node
import { load } from './load.js'

load('main.cjs')
