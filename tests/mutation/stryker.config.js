/** Which code the mutation tool names its mutations of; trying them is `npm run mutation`'s own. */
export default { mutate: ["src/{core,workbook}/**/*.ts", "!src/**/*.{test,typetest}.ts"], tempDirName: ".tmp/mutation/sandbox" };
