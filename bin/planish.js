#!/usr/bin/env node
const { start } = require('./start.js');
start(__dirname);
