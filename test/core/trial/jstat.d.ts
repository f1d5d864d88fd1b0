declare module 'jstat' {
  const jstat: {
    mean(values: readonly number[]): number;
    stdev(values: readonly number[], sample: boolean): number;
    corrcoeff(one: readonly number[], other: readonly number[]): number;
    readonly normal: {
      cdf(x: number, mean: number, deviation: number): number;
      inv(share: number, mean: number, deviation: number): number;
    };
  };
  export default jstat;
}
