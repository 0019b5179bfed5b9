// The screens and the core's Kotlin. The same files are compiled by ../pom.xml for a computer.
plugins {
    alias(libs.plugins.android.library)
    alias(libs.plugins.kotlin.android)
    alias(libs.plugins.kotlin.compose)
}

android {
    namespace = "ladderbook.screens"
    compileSdk = 36
    defaultConfig { minSdk = 26 }
    compileOptions {
        sourceCompatibility = JavaVersion.VERSION_17
        targetCompatibility = JavaVersion.VERSION_17
    }
    sourceSets["main"].kotlin.srcDir(rootDir.resolve("../target/bindings/kotlin"))
}

kotlin { compilerOptions { jvmTarget = org.jetbrains.kotlin.gradle.dsl.JvmTarget.JVM_17 } }

dependencies {
    api(libs.compose.ui)
    api(libs.compose.foundation)
    api(libs.coroutines.android)
    api(libs.jna) { artifact { type = "aar" } }
}
