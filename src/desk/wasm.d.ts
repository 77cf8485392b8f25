declare module "*.wasm" {
  /** The program's bytes, where the build puts them inside. */
  const program: Uint8Array<ArrayBuffer>;
  export default program;
}
