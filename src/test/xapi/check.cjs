// Reads xAPI statements as JSON lines from standard input and prints every fault that xapi-validation finds, one a line.
// The last line says how many statements were read. Exit code: 0 when none has a fault, 1 otherwise.
'use strict';
const validate = require('xapi-validation').default;
const lines = require('fs').readFileSync(0, 'utf8').split('\n').filter((line) => line !== '');
let faults = 0;
lines.forEach((line, at) => {
  for (const warning of validate(JSON.parse(line))) {
    faults += 1;
    console.log(`${at + 1}: ${warning.constructor.name} ${JSON.stringify(warning)}`);
  }
});
console.log(`${lines.length} statements, ${faults} faults`);
process.exit(faults === 0 ? 0 : 1);
