declare module "*.xml" {
  /** The file's text. */
  const text: string;
  export default text;
}
