// Serves one peer: reads the columns that make-data.py wrote, then runs rounds as standard input asks for them.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <fstream>
#include <iostream>
#include <sstream>
#include <string>
#include <sys/mman.h>
#include <sys/stat.h>
#include <thread>
#include <unistd.h>
#include <vector>

#if defined(TM_LANES)
#include "lanes.hpp"
using Number = Lanes;
#elif defined(TM_PACKED)
#include "packed.hpp"
using Number = Packed;
#else
#include "scalar.hpp"
using Number = Scalar;
#endif

#include "model.hpp"

struct Column {
  int field;
  double *values;
};

struct Data {
  long rows = 0;
  Machine<Number> constants;
  std::vector<Column> inputs, outputs;
};

static int index_of(const char *const *names, int count, const std::string &name) {
  for (int i = 0; i < count; i++)
    if (name == names[i])
      return i;
  std::fprintf(stderr, "no such column: %s\n", name.c_str());
  std::exit(2);
}

static double *map_file(const std::string &path, long rows) {
  int file = open(path.c_str(), O_RDONLY);
  struct stat s;
  if (file < 0 || fstat(file, &s) != 0 || s.st_size < rows * 8) {
    std::fprintf(stderr, "%s: missing or too short\n", path.c_str());
    std::exit(2);
  }
  void *at = mmap(nullptr, s.st_size, PROT_READ, MAP_SHARED | MAP_POPULATE, file, 0);
  close(file);
  return (double *)at;
}

static Data read(const std::string &folder) {
  Data d;
  std::memset((void *)&d.constants, 0, sizeof d.constants);
  std::ifstream manifest(folder + "/manifest.txt");
  std::string line, kind, name, value;
  while (std::getline(manifest, line)) {
    std::istringstream words(line);
    value.clear();
    words >> kind >> name >> value;
    if (kind == "#")
      continue;
    if (kind == "rows")
      d.rows = std::stol(name);
    else if (kind == "output") {
      size_t bytes = (d.rows * 8 + 4095) / 4096 * 4096;
      double *at = (double *)mmap(nullptr, bytes, PROT_READ | PROT_WRITE, MAP_PRIVATE | MAP_ANONYMOUS, -1, 0);
      d.outputs.push_back({index_of(OutputNames, OutputCount, name), at});
    } else {
      int field = index_of(InputNames, InputCount, name);
      if (value == "column")
        d.inputs.push_back({field, map_file(folder + "/" + name + ".f64", d.rows)});
      else
        ((Number *)&d.constants)[field] = std::stod(value);
    }
  }
  return d;
}

template <bool Stream> static void run(const Data &d, long from, long to) {
  Machine<Number> x = d.constants;
  Point<Number> y;
  for (long row = from; row < to; row += Number::width) {
    for (const Column &c : d.inputs)
      ((Number *)&x)[c.field] = Number::load(c.values + row);
    operating_point(x, y);
    for (const Column &c : d.outputs)
      if (Stream)
        ((const Number *)&y)[c.field].stream(c.values + row);
      else
        ((const Number *)&y)[c.field].store(c.values + row);
  }
}

static double seconds() {
  return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

#if defined(TM_LANES)
// Least nanoseconds of one instruction where nothing waits for it: eight chains side by side.
template <class F> static double alone(F step) {
  double least = 1e300;
  for (int k = 0; k < 5; k++) {
    Lanes chains[12];
    for (int i = 0; i < 12; i++)
      chains[i] = 1.0 + 1e-3 * i;
    double start = seconds();
    for (int n = 0; n < 100000; n++)
      for (Lanes &c : chains)
        c = step(c);
    least = std::min(least, (seconds() - start) * 1e9 / 1.2e6);
    for (Lanes &c : chains)
      asm volatile("" ::"m"(c));
  }
  return least;
}

// What bounds the model: instructions a row, nanoseconds of each kind, and columns in and out with nothing in between.
static void limits(const Data &d, long rows) {
#ifdef TM_COUNT
  counts = {};
  run<false>(d, 0, rows);
  for (long n : {counts.sums, counts.products, counts.fused, counts.divisions, counts.roots, counts.choices, counts.others})
    std::printf("%.4g ", (double)n / rows);
  std::printf("\n");
#else
  const Lanes a = 0.999999, b = 1e-6;
  std::printf("%.4g ", alone([=](Lanes x) { return mul_add(x, a, b); }));
  std::printf("%.4g ", alone([=](Lanes x) { return a / x; }));
  std::printf("%.4g ", alone([=](Lanes x) { return sqrt(x); }));
  double least = 1e300;
  for (int k = 0; k < 3; k++) {
    double start = seconds();
    for (long row = 0; row < rows; row += Lanes::width) {
      Lanes sum = 0;
      for (const Column &c : d.inputs)
        sum = sum + Lanes::load(c.values + row);
      for (const Column &c : d.outputs)
        sum.stream(c.values + row);
    }
    least = std::min(least, (seconds() - start) * 1e9 / rows);
  }
  std::printf("%.4g\n", least);
#endif
  std::fflush(stdout);
}
#endif

int main(int argc, char **argv) {
  if (argc != 2)
    return std::fprintf(stderr, "usage: peer FOLDER\n"), 2;
  Data d = read(argv[1]);
  std::string line, command, folder;
  while (std::getline(std::cin, line)) {
    std::istringstream words(line);
    long rows = 1, times = 1;
    words >> command >> rows;
    if (!(words >> times))
      times = 1;
    double start = seconds();
    if (command == "quit")
      break;
    if (command == "about") {
      std::printf("g++ %s\n", __VERSION__);
      std::fflush(stdout);
      continue;
    }
#if defined(TM_LANES)
    if (command == "limits") {
      limits(d, rows);
      continue;
    }
#endif
    if (command == "cache") {
      for (long k = 0; k < times; k++)
        run<false>(d, 0, rows);
    } else if (command == "memory") {
      std::vector<std::thread> others;
      long part = (rows / times + 7) / 8 * 8;
      for (long k = 1; k < times; k++)
        others.emplace_back([&d, part, rows, k] { run<true>(d, part * k, std::min(rows, part * (k + 1))); });
      run<true>(d, 0, std::min(rows, part));
      for (std::thread &t : others)
        t.join();
      times = 1;
    } else if (command == "write") {
      words.clear();
      words.str(line);
      words >> command >> rows >> folder;
      run<false>(d, 0, rows);
      for (const Column &c : d.outputs) {
        std::ofstream file(folder + "/" + OutputNames[c.field] + ".f64", std::ios::binary);
        file.write((const char *)c.values, rows * 8);
      }
    }
    std::printf("%.6g\n", (seconds() - start) * 1e9 / ((double)rows * (double)times));
    std::fflush(stdout);
  }
}
