// Times CGAL's straight skeleton. In: a line for each polygon, `x y x y …`, anticlockwise. Out: a line for each, `corners seconds faces`.

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_2.h>
#include <CGAL/create_straight_skeleton_2.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <iostream>
#include <sstream>
#include <string>

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Polygon = CGAL::Polygon_2<Kernel>;
using Clock = std::chrono::steady_clock;

int main(int count, char** given) {
    const int rounds = count > 1 ? std::atoi(given[1]) : 5;
    std::string line;
    while (std::getline(std::cin, line)) {
        std::istringstream numbers(line);
        Polygon polygon;
        for (double x, y; numbers >> x >> y;) {
            polygon.push_back(Kernel::Point_2(x, y));
        }
        double best = 1e9;
        std::size_t faces = 0;
        for (int round = 0; round < rounds; ++round) {
            const auto begun = Clock::now();
            const auto skeleton = CGAL::create_interior_straight_skeleton_2(
                polygon.vertices_begin(), polygon.vertices_end(), Kernel());
            best = std::min(best, std::chrono::duration<double>(Clock::now() - begun).count());
            faces = skeleton ? skeleton->size_of_faces() : 0;
        }
        std::cout << polygon.size() << ' ' << best << ' ' << faces << '\n';
    }
}
