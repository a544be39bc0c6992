#!/usr/bin/env node
import process from 'node:process';
import { loadCompiled } from '../dist/load-compiled.js';
const dist = new URL('../dist/', import.meta.url);
process.exitCode = await loadCompiled(new URL('main.cjs', dist)).run(process, dist);
