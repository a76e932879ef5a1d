// Files of courses/ as texts inside the page.
declare module "*.yaml" {
  const text: string;
  export default text;
}
declare module "*.csv" {
  const text: string;
  export default text;
}
