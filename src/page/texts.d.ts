// Files that are bundled as they are.
declare module "*.yaml" {
  const text: string;
  export default text;
}
declare module "*.csv" {
  const text: string;
  export default text;
}
